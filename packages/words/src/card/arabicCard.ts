import { arabic } from '../diary/arabic.js';
import type { CardText } from './cardText.js';

/** The preparation card in Arabic, from right to left: a language that the program's own screens need not have. */
export const arabicCard: CardText = {
  name: arabic.name,
  locale: arabic.locale,
  direction: 'rtl',
  heading: 'قبل قياس ضغط دمك',
  before: (minutes) => `قبل القياس بمدة ${minutes} دقيقة: لا قهوة ولا شاي ولا كولا، ولا تدخين، ولا رياضة.`,
  toilet: 'اذهب إلى الحمّام أولًا.',
  rest: (minutes) => `اجلس بهدوء مدة ${minutes} دقائق.`,
  back: 'أسند ظهرك إلى الكرسي.',
  feet: 'القدمان على الأرض والساقان غير متقاطعتين.',
  bare: 'الذراع مكشوف: لا كُمّ تحت الكُفّة.',
  arm: 'ضع ذراعك على الطاولة على مستوى القلب.',
  quiet: 'لا تتكلّم أثناء القياس.',
  tell: 'أخبرنا إذا كنت تتألم أو تشعر بتوعّك، أو إذا كان من الممكن أنكِ حامل، أو إذا كان هناك ذراع يجب ألّا يُستعمل.',
  source: (work) => `المُدد بحسب ${work}. ما تقوله لك عيادتك يأتي أولًا.`,
  notReviewed: arabic.notReviewed,
};
