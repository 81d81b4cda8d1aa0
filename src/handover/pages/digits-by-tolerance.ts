/** One place more than the tolerance has, as gauges read; without one as a drawing has it. */
export function digitsByTolerance(toleranceMm: number | undefined, unit: string): string {
  if (toleranceMm === undefined || !(toleranceMm > 0)) return unit === '°' ? '0.0#' : '0.00';
  const places = Math.min(3, Math.max(1, Math.ceil(-Math.log10(toleranceMm) - 1e-9) + 1));
  return `0.${'0'.repeat(places)}`;
}
