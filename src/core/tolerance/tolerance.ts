// Tolerances of single sizes, from the published tables or from the user's own.
import { DIN_16742_TG6 } from '../../standards/din16742-tg6';
import { DIN_16901_130 } from '../../standards/din16901-130';
import { ISO_2768_1_LINEAR } from '../../standards/iso2768-1-linear';
import { ISO_286_1_IT_GRADES } from '../../standards/iso286-1-it-grades';
import type { Reading, Table } from '../../standards/table';
import { bandReading } from './bands';

export type GeneralClass = 'f' | 'm' | 'c' | 'v';
/** `same`: one mould half holds both ends of the size; `across`: it runs over the parting line or a slide. */
export type Tooling = 'same' | 'across';

export const MOULDED_GROUPS: Readonly<Record<string, Table>> = { 'DIN 16901-130': DIN_16901_130, 'DIN 16742-TG6': DIN_16742_TG6 };

/** Wide grades are not given for the smallest sizes. */
export const WIDE_GRADE = 14;
export const WIDE_GRADE_ABOVE_MM = 1;
export const isWideGrade = (grade: string): boolean => Number(grade.slice(2)) >= WIDE_GRADE;

export function gradeReadings(sizeMm: number, grade: string): Reading[] {
  const band = bandReading(ISO_286_1_IT_GRADES, sizeMm, grade);
  return [isWideGrade(grade) ? { ...band, above: WIDE_GRADE_ABOVE_MM } : band];
}

export function generalReadings(sizeMm: number, toleranceClass: GeneralClass): Reading[] {
  return [bandReading(ISO_2768_1_LINEAR, sizeMm, toleranceClass)];
}

export function mouldedReadings(sizeMm: number, group: Table, tooling: Tooling): Reading[] {
  return [bandReading(group, sizeMm, tooling)];
}
