/** What a person was known by at the start of a round. A room or a bed is no identifier (bedside handbook 3.18). */
export const IDENTIFIERS_SAID = ['name', 'birth-date', 'number', 'other'] as const;
export type IdentifierSaid = (typeof IDENTIFIERS_SAID)[number];

/** Who agreed. Source: bedside handbook 3.18; rules of capacity are local. */
export const CONSENTS = ['agreed', 'agreed-by-other', 'could-not-be-asked', 'declined'] as const;
export type Consent = (typeof CONSENTS)[number];

/** Source: decision of this project. */
export const CHAPERONES = ['not-needed', 'offered-declined', 'present'] as const;
export type Chaperone = (typeof CHAPERONES)[number];

/** Source: decision of this project. */
export const INTERPRETERS = ['not-needed', 'offered-declined', 'present'] as const;
export type Interpreter = (typeof INTERPRETERS)[number];
