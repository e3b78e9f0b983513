/**
 * The number of the table's columns. It grows when a column is added; columns are never renamed or moved. 2: pressures,
 * the other signs, the class book. 3: values from elsewhere. 4: how the number of a sign was typed, how a person felt on their feet.
 * 5: readings at home and over 24 hours. 6: how long a person had lain before a reading.
 * 7: a person's number is always guarded as a text. 8: whether a reading of a recorder was started by hand.
 * 9: whether the gauge of a reading failed a check since.
 */
export const CSV_SCHEMA_NUMBER = 9;
