import type { DiaryText } from './diaryText.js';

/** The diary in Arabic, from right to left; numbers in the digits that devices show. */
export const arabic: DiaryText = {
  name: 'العربية',
  locale: 'ar-u-nu-latn',
  direction: 'rtl',
  isReviewed: false,
  notReviewed: 'ترجمة لم تُراجَع سريريًا.',
  title: 'ضغط دمي في البيت',
  whose: (name) => `سجلّ ${name}`,
  born: 'تاريخ الميلاد:',
  number: 'الرقم:',
  device: 'الجهاز والكُفّة:',
  plan: (days, readings) =>
    `قِس الضغط كل صباح وكل مساء (عدد الأيام: ${days}؛ عدد القياسات في كل مرة: ${readings}).`,
  bringBack: (day) => `يُرجى إعادة هذا السجلّ يوم ${day} أو في أقرب وقت بعده.`,
  howTitle: 'كيف تقيس',
  before: (minutes) =>
    `قبل القياس بمدة ${minutes} دقيقة: لا قهوة ولا شاي ولا كولا، ولا تدخين، ولا رياضة. اذهب إلى الحمّام أولًا.`,
  rest: (minutes) =>
    `اجلس بهدوء مدة ${minutes} دقائق: الظهر مسنود إلى الكرسي، والقدمان على الأرض، والساقان غير متقاطعتين.`,
  cuff: 'ضع الكُفّة على أعلى الذراع المكشوف، وضع ذراعك على الطاولة على مستوى القلب.',
  arm: 'استعمل الذراع نفسه دائمًا:',
  left: 'الأيسر',
  right: 'الأيمن',
  quiet: 'لا تتكلّم ولا تتحرّك أثناء القياس.',
  times: (readings) =>
    readings === 1
      ? 'في الصباح قِس قبل الدواء وقبل الفطور، وفي المساء قبل النوم.'
      : 'انتظر دقيقة واحدة بين القياس والذي يليه. في الصباح قِس قبل الدواء وقبل الفطور، وفي المساء قبل النوم.',
  write: 'اكتب كل قياس فورًا كما يظهر على الجهاز، حتى الذي يبدو خاطئًا. لا تترك أي قياس.',
  dangerTitle: 'متى تطلب المساعدة',
  severe: ({ systolic, diastolic }) =>
    `إذا كان الرقم العلوي ${systolic} أو أكثر، أو الرقم السفلي ${diastolic} أو أكثر:`,
  again: (minutes) =>
    `اجلس بهدوء مدة ${minutes} دقائق ثم قِس مرة أخرى. إذا بقي مرتفعًا هكذا فاتصل بعيادتك اليوم.`,
  symptoms:
    'اتصل برقم الطوارئ فورًا إذا كان لديك أيضًا ألم في الصدر أو الظهر، أو ضيق في التنفس، أو ضعف أو خدر، أو صعوبة في الكلام أو الرؤية، أو صداع شديد، أو تشوّش، أو نوبة تشنّج، أو كان البول قليلًا جدًا. لا تنتظر ولا تُعِد القياس.',
  pregnant: ({ pregnantSystolic, pregnantDiastolic, weeksAfterBirth }) =>
    `إذا كنتِ حاملًا أو ولدتِ خلال آخر ${weeksAfterBirth} أسابيع: اتصلي فورًا عند ${pregnantSystolic} أو أكثر، أو ${pregnantDiastolic} أو أكثر.`,
  ownAdvice: 'إذا قالت لك عيادتك شيئًا آخر فافعل ما قالته عيادتك.',
  clinicPhone: 'العيادة:',
  emergencyPhone: 'الطوارئ:',
  day: 'اليوم',
  morning: 'صباح',
  evening: 'مساء',
  time: 'الوقت',
  reading: (number) => `القياس ${number}`,
  upper: 'العلوي',
  lower: 'السفلي',
  pulse: 'النبض',
  notes: 'الأدوية والأعراض',
  table: 'قياساتي',
};
