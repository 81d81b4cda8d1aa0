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

/**
 * Where the full width IT of the tolerance is read, mm.
 * N size, mm; grade IT5 to IT16.
 * TOL.IT accepts N above 0 mm; sizes and grades outside the table are refused.
 * Source: ISO 286-1, IT5 to IT16 up to 500 mm (read in 1 secondary copy; IT15, IT16 and sizes above 315 mm from memory, cross-checked).
 */
export function gradeReadings(sizeMm: number, grade: string): Reading[] {
  const band = bandReading(ISO_286_1_IT_GRADES, sizeMm, grade);
  return [isWideGrade(grade) ? { ...band, above: WIDE_GRADE_ABOVE_MM } : band];
}

/**
 * Where the general tolerance ± t is read, mm. Not written for mouldings: for those use TOL.MOULDED.
 * N size, mm; tolerance_class f, m, c or v.
 * TOL.GENERAL accepts N above 0 mm; sizes and classes outside the table are refused.
 * Source: ISO 2768-1:1989, linear sizes (read in 3 secondary copies).
 */
export function generalReadings(sizeMm: number, toleranceClass: GeneralClass): Reading[] {
  return [bandReading(ISO_2768_1_LINEAR, sizeMm, toleranceClass)];
}

/**
 * Where the tolerance ± t of a moulded size is read, mm.
 * N size, mm; group DIN 16901-130, DIN 16742-TG6 or own table; tooling same or across.
 * TOL.MOULDED accepts N above 0 mm; sizes outside the table are refused.
 * Source: DIN 16901:1982, group 130, withdrawn 2009 (read in 3 secondary copies, two of them related); DIN 16742:2013, group TG6;
 * ISO 20457:2018 has the same row (read in 2 secondary copies; same tool half and sizes above 250 mm in 1).
 */
export function mouldedReadings(sizeMm: number, group: Table, tooling: Tooling): Reading[] {
  return [bandReading(group, sizeMm, tooling)];
}
