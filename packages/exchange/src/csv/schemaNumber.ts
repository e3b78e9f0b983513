/**
 * The number of the table's columns. It grows when a column is added; columns are never renamed or moved. 2: pressures,
 * the other signs, the class book. 3: values from elsewhere.
 */
export const CSV_SCHEMA_NUMBER = 3;
