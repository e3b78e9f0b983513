/** What a column of a table of readings holds. `pressure` is both numbers in one cell: `142/88`, `142/88 74`. */
export const SERIES_COLUMNS = [
  'time',
  'date',
  'clock',
  'systolic',
  'diastolic',
  'pulse',
  'pressure',
  'note',
  'asleep',
  'arm',
  'device',
  'site',
  'part',
  'irregular',
  'started',
] as const;
export type SeriesColumn = (typeof SERIES_COLUMNS)[number];

/** A word as it is compared: lower case, without accents and without what is no letter. */
export function plainWord(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/**
 * Words of headings in English, Spanish, Portuguese, French, Italian, German, Dutch, Arabic and Hebrew, as they are in use;
 * from memory. Where they say nothing, or another language, the content of the columns tells.
 */
const HEADINGS: Readonly<Record<SeriesColumn, string>> = {
  time: 'time|date time|datetime|date and time|timestamp|measured at|measuredat|measurement time|reading time|time of measurement|fecha y hora|fecha hora|data e hora|data hora|date et heure|date heure|data e ora|data ora|zeitpunkt|datum und uhrzeit|datum uhrzeit|datum zeit|datum en tijd|datum tijd|التاريخ والوقت|תאריך ושעה',
  date: 'date|day|measurement date|date of measurement|fecha|dia|data|jour|giorno|datum|tag|dag|التاريخ|اليوم|תאריך|יום',
  clock:
    'clock|time of day|hora|hour|heure|ora|uhrzeit|zeit|uhr|tijd|tijdstip|orario|horario|الوقت|الساعة|שעה',
  systolic:
    'systolic|sys|syst|sbp|systolic reading|systolic pressure|systolic bp|systolic blood pressure|bp systolic|upper|top|sistolica|sistolico|sist|pas|presion sistolica|tension sistolica|pressao sistolica|maxima|max|systolique|tension systolique|pression systolique|tas|sistolica pressione|massima|systolisch|systole|rr sys|rr syst|oberer wert|bovendruk|الانقباضي|انقباضي|סיסטולי',
  diastolic:
    'diastolic|dia|diast|dbp|diastolic reading|diastolic pressure|diastolic bp|diastolic blood pressure|bp diastolic|lower|bottom|diastolica|diastolico|pad|presion diastolica|tension diastolica|pressao diastolica|minima|min|diastolique|tension diastolique|pression diastolique|tad|minima pressione|diastolisch|diastole|rr dia|rr diast|unterer wert|onderdruk|الانبساطي|انبساطي|דיאסטולי',
  pulse:
    'pulse|pulse rate|pulse reading|heart rate|heartrate|hr|pr|bpm|pul|beats per minute|pulso|frecuencia cardiaca|frec cardiaca|fc|frequencia cardiaca|pouls|frequence cardiaque|polso|frequenza cardiaca|frequenza|puls|herzfrequenz|hf|pols|hartslag|polsslag|النبض|نبض|דופק',
  pressure:
    'pressure|bp|blood pressure|reading|presion|presion arterial|pa|ta|tension|tension arterial|pressao|pressao arterial|pression|pression arterielle|pressione|pressione arteriosa|blutdruck|rr|bloeddruk|ضغط الدم|الضغط|לחץ דם',
  note: 'note|notes|comment|comments|remark|remarks|nota|notas|comentario|comentarios|observaciones|observacoes|remarque|remarques|commentaire|commentaires|commento|bemerkung|bemerkungen|notiz|kommentar|opmerking|opmerkingen|ملاحظات|הערות',
  asleep:
    'asleep|sleep|sleeping|dormido|durmiendo|sueno|dormindo|sono|endormi|dort|sommeil|addormentato|sonno|schlaf|schlafend|schlafe|slaap|slapend|نائم|ישן',
  arm: 'arm|side|brazo|lado|braco|bras|cote|braccio|lato|seite|zijde|الذراع|זרוע',
  device:
    'device|monitor|cuff|aparato|dispositivo|equipo|tensiometro|aparelho|appareil|apparecchio|gerat|geraet|toestel|الجهاز|מכשיר',
  site: 'site|place|sitio|lugar|local|lieu|sito|stelle|messort|plaats|الموضع',
  irregular:
    'irregular|irregular pulse|pulse irregular|irregular heartbeat|irregular heart beat|irregular rhythm|arrhythmia|pulso irregular|latido irregular|latidos irregulares|ritmo irregular|arritmia|batimento irregular|pouls irregulier|rythme irregulier|arythmie|polso irregolare|battito irregolare|aritmia|unregelmassiger puls|puls unregelmassig|arrhythmie|onregelmatige pols|onregelmatige hartslag|aritmie|نبض غير منتظم|דופק לא סדיר',
  started:
    'started|started by|started by hand|by hand|manual|manual reading|manual measurement|initiated|initiated by|trigger|triggered by|mode|measurement mode|inicio|iniciada por|modo|modo de medida|a mano|modo de medicao|declenchement|declenche par|avvio|modalita|auslosung|ausgelost durch|messmodus|modus|gestart door|meetmodus|طريقة القياس|אופן המדידה',
  part: 'part|part of day|session|period|momento|momento del dia|periodo|moment|seance|sessione|tageszeit|dagdeel|الفترة',
};

const ROLE_OF: ReadonlyMap<string, SeriesColumn> = new Map(
  SERIES_COLUMNS.flatMap((role) => HEADINGS[role].split('|').map((word) => [plainWord(word), role] as const)),
);

/** No heading that the words know is longer. Characters; source: decision. */
const LONGEST_HEADING = 100;

const UNITS = /\b(mm ?hg|kpa|bpm|1 min|min|per minute|lpm|ppm|hh mm|h min)\b/g;

/** What a heading says its column is; null where the words do not know it. Units in it are passed over. */
export function roleOfHeading(heading: string): SeriesColumn | null {
  if (heading.length > LONGEST_HEADING) return null;
  const whole = plainWord(heading);
  const found = ROLE_OF.get(whole);
  if (found !== undefined) return found;
  const bare = plainWord(heading.replace(/[([].*?[)\]]/g, ' '));
  return ROLE_OF.get(bare) ?? ROLE_OF.get(plainWord(bare.replace(UNITS, ' '))) ?? null;
}

/** The unit of pressure that a heading or cell names; null for none. */
export function unitNamed(text: string): 'mmHg' | 'kPa' | null {
  if (/\bk\s?pa\b/i.test(text)) return 'kPa';
  return /\bmm\s?hg\b/i.test(text) ? 'mmHg' : null;
}

/** Beginnings of the names of months, January first, in the languages of the headings written with Latin letters. */
export const MONTHS: readonly (readonly string[])[] = [
  ['jan', 'ene', 'gen'],
  ['feb', 'fev'],
  ['mar', 'maer', 'mrt'],
  ['apr', 'abr', 'avr'],
  ['may', 'mai', 'mag', 'mei'],
  ['jun', 'juin', 'giu'],
  ['jul', 'juil', 'lug'],
  ['aug', 'ago', 'aou'],
  ['sep', 'set'],
  ['oct', 'okt', 'ott', 'out'],
  ['nov'],
  ['dec', 'dic', 'dez'],
];

const YES_ALONE = new Set('yes|y|true|1|x|si|s|sim|oui|o|ja|j|نعم|כן'.split('|').map(plainWord));
const NO_ALONE = new Set('no|n|false|0|nao|non|nein|nee|لا|לא'.split('|').map(plainWord));
const YES = new Set([
  ...YES_ALONE,
  ...'asleep|sleep|sleeping|night|dormido|schlaf|nacht|noche'.split('|').map(plainWord),
]);
const NO = new Set([...NO_ALONE, ...'awake|day|despierto|wach|wakker|tag|dia'.split('|').map(plainWord)]);

/** Sleep by day: a third state, neither awake nor asleep. Source: out-of-office handbook 7 (a decision). */
const NAP = new Set('siesta|nap|napping|sieste|mittagsschlaf|sonesta|قيلولة'.split('|').map(plainWord));

/** What a cell says of being asleep; null for a nap by day, which is neither; undefined where the words do not know it. */
export function asleepOf(cell: string): boolean | null | undefined {
  const word = plainWord(cell);
  if (NAP.has(word)) return null;
  return YES.has(word) ? true : NO.has(word) ? false : undefined;
}

const IRREGULAR = new Set(
  'irregular|detected|arrhythmia|afib|detectado|arritmia|detecte|arythmie|rilevato|aritmia|arrhythmie|irregulier|irreguliere|irregolare|unregelmassig|onregelmatig|غير منتظم|לא סדיר'
    .split('|')
    .map(plainWord),
);
const REGULAR = new Set(
  'regular|not detected|no detectado|normal|regulier|regolare|regelmassig|regelmatig|منتظم|סדיר'
    .split('|')
    .map(plainWord),
);

/** Marks that devices and people put beside a reading; common practice, no source. */
const MARK = /^[*!+✓✔√☑●• ]+$/u;
const AS_PICTURE = /\uFE0F/gu;
const NOTHING_MARKED = /^(-+|–|—|\.+|n ?\/? ?a|nan|null|none)$/i;

/** What a cell says of an irregular pulse; null where it is blank, undefined where the words do not know it. */
export function irregularOf(cell: string): boolean | null | undefined {
  if (cell === '' || NOTHING_MARKED.test(cell)) return null;
  if (MARK.test(cell.replace(AS_PICTURE, ''))) return true;
  const word = plainWord(cell);
  if (IRREGULAR.has(word)) return true;
  if (REGULAR.has(word)) return false;
  return YES_ALONE.has(word) ? true : NO_ALONE.has(word) ? false : undefined;
}

const BY_HAND = new Set(
  'manual|manually|manual reading|manual measurement|m|man|by hand|hand|started by hand|patient|by patient|on demand|extra|event|a mano|manualmente|inicio manual|iniciada a mano|medicion manual|a la main|manuel|manuelle|manuellement|manuale|manualmente|a mano|manuell|von hand|handmatig|met de hand|يدوي|يدويا|ידני'
    .split('|')
    .map(plainWord),
);
const BY_CLOCK = new Set(
  'auto|automatic|automatically|a|clock|timer|scheduled|schedule|programmed|program|interval|automatico|automatica|programada|programado|automatique|programme|automatica|automatisch|geplant|programmiert|gepland|تلقائي|آلي|אוטומטי'
    .split('|')
    .map(plainWord),
);

/** Headings that ask whether a hand started the reading: under another, of a mode or a trigger, yes and a mark say nothing of it. */
const ASKS_BY_HAND = new Set(
  'started by hand|by hand|manual|manual reading|manual measurement|inicio manual|iniciada a mano|medicion manual|a mano|a la main|manuel|manuelle|manuale|manuell|von hand|handmatig|met de hand|يدوي|ידני'
    .split('|')
    .map(plainWord),
);

/**
 * What a cell says of who started a reading, true for by hand; null where it is blank, undefined where the words do not
 * know it: the number of a mode, too.
 */
export function startedByHandOf(cell: string, heading: string): boolean | null | undefined {
  if (cell === '' || NOTHING_MARKED.test(cell)) return null;
  const word = plainWord(cell);
  if (BY_HAND.has(word)) return true;
  if (BY_CLOCK.has(word)) return false;
  if (!ASKS_BY_HAND.has(plainWord(heading.replace(/[([].*?[)\]]/g, ' ')))) return undefined;
  if (MARK.test(cell.replace(AS_PICTURE, '')) || YES_ALONE.has(word)) return true;
  return NO_ALONE.has(word) ? false : undefined;
}

/** Whether a note, or a part of it between commas, semicolons and full stops, says that a reading was started by hand and nothing else. */
export function isNotedByHand(note: string): boolean {
  return note.split(/[;,.\n]/).some((part) => {
    const word = plainWord(part);
    return word.length > 3 && !SAYS_MORE.has(word) && BY_HAND.has(word);
  });
}

/** A note without the first line that says started by hand and nothing else, as an Evenfall writes it beside the note; null where none does. */
export function withoutByHand(note: string): string | null {
  const lines = note.split('\n');
  const at = lines.findIndex((line) => {
    const word = plainWord(line);
    return word.length > 3 && !SAYS_MORE.has(word) && BY_HAND.has(word);
  });
  return at < 0 ? null : lines.toSpliced(at, 1).join('\n');
}

/** Words that say it under a heading of their own, and in a note something else. */
const SAYS_MORE = new Set(['hand', 'patient', 'extra', 'event']);

const MORNING = new Set(
  'morning|am|manana|manha|matin|mattina|mattino|morgen|morgens|fruh|ochtend|صباح|בוקר'
    .split('|')
    .map(plainWord),
);
const EVENING = new Set(
  'evening|pm|night|tarde|noche|noite|soir|sera|abend|abends|avond|مساء|ערב'.split('|').map(plainWord),
);
const OTHER = new Set('other|noon|midday|mediodia|otro|autre|altro|mittag|middag'.split('|').map(plainWord));

/** The part of the day that a cell names; undefined where the words do not know it. */
export function partOf(cell: string): 'morning' | 'evening' | 'other' | undefined {
  const word = plainWord(cell);
  if (MORNING.has(word)) return 'morning';
  if (EVENING.has(word)) return 'evening';
  return OTHER.has(word) ? 'other' : undefined;
}

const WRIST = /\b(wrist|muneca|punho|pulso|poignet|polso|handgelenk|pols)\b|معصم|פרק/;

/** Whether a cell of the site or arm says that the cuff was at the wrist. */
export function isWrist(cell: string): boolean {
  return WRIST.test(plainWord(cell));
}

/** What recorders and people write where there is no number. */
const NO_NUMBER = /^(-+|–|—|\*+|\.+|\?+|n ?\/? ?a|nan|null|none)$/i;
const ERROR_CODE = /^(e|err|error|fehler)[\s:.-]*\d*$/i;

export function isNoNumber(cell: string): boolean {
  return cell === '' || NO_NUMBER.test(cell);
}

/** Whether a cell is the code by which a recorder says that it failed. */
export function isErrorCode(cell: string): boolean {
  return ERROR_CODE.test(cell);
}
