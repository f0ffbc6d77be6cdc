import { z } from 'zod';
import { said } from './say.ts';

const DAYS_BEFORE = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334] as const;
const LENGTHS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** '09:30' as hours after midnight, 9.5. */
export function timeOfDay(meaning: string) {
  const wrong = said('is not a time of day', 'Write it like 09:30.');
  return z
    .string({ error: () => wrong })
    .meta({ description: `${meaning} Hours and minutes, such as 09:30.`, examples: ['09:30'] })
    .transform((text, context) => {
      const match = /^(\d{1,2}):(\d{2})$/.exec(text.trim());
      const hours = Number(match?.[1]);
      const minutes = Number(match?.[2]);
      if (match && hours < 24 && minutes < 60) return hours + minutes / 60;
      context.issues.push({ code: 'custom', message: wrong, input: text });
      return z.NEVER;
    });
}

function isDate(year: number, month: number, day: number): boolean {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const length = month === 2 && !leap ? 28 : (LENGTHS[month - 1] ?? 0);
  return day >= 1 && day <= length;
}

/** Years in which somebody keeps an enclosure. */
const YEARS = { first: 1900, last: 2199 } as const;

/** An ISO date, kept as text. */
export function date(meaning: string) {
  const wrong = said('is not a date', 'Write year, month and day, such as 2026-03-01.');
  const far = said(`is outside the years ${YEARS.first} to ${YEARS.last}`, 'Check the year.');
  return z
    .string({ error: () => wrong })
    .meta({ description: `${meaning} Year, month and day, such as 2026-03-01.`, examples: ['2026-03-01'] })
    .refine((text) => {
      const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
      return match !== null && isDate(Number(match[1]), Number(match[2]), Number(match[3]));
    }, wrong)
    .refine((text) => {
      const year = /^(\d{4})-/.exec(text)?.[1];
      return year === undefined || (Number(year) >= YEARS.first && Number(year) <= YEARS.last);
    }, far);
}

/** 'MM-DD' as the day of an ordinary year, 1 on the first of January. */
export function dayOfYear(meaning: string) {
  const wrong = said('is not a day of the year', 'Write month and day, such as 07-25.');
  return z
    .string({ error: () => wrong })
    .meta({ description: `${meaning} Month and day, such as 07-25.`, examples: ['07-25'] })
    .transform((text, context) => {
      const match = /^(\d{2})-(\d{2})$/.exec(text.trim());
      const month = Number(match?.[1]);
      const day = Number(match?.[2]);
      const before = DAYS_BEFORE[month - 1];
      if (match && before !== undefined && isDate(2000, month, day)) return before + day;
      context.issues.push({ code: 'custom', message: wrong, input: text });
      return z.NEVER;
    });
}
