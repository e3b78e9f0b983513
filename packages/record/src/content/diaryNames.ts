/** The languages in which a diary can be printed. */
export const DIARY_LANGUAGES = ['en', 'es', 'ar'] as const;
export type DiaryLanguage = (typeof DIARY_LANGUAGES)[number];

/** Longest diary and most readings in one sitting that a page has room for. Source: decision of this project. */
export const DIARY_LIMITS = { days: 14, readingsInSitting: 4 } as const;
