import { cell } from './cell';

/**
 * Offset per side that draft makes over a height, mm: height·tan(draft).
 * @customfunction DRAFT.OFFSET
 * @param height Height along the pull, mm or text with unit; a blank is 0
 * @param draft Draft per side, degrees or text; write "0°" for none, a blank or bare 0 is refused
 * @returns Offset per side, mm
 */
export function draftOffset(height: any, draft: any): any {
  return cell('DRAFT.OFFSET', [height, draft]);
}

/**
 * Draft per side that makes an offset over a height, degrees.
 * @customfunction DRAFT.ANGLE
 * @param offset Offset per side, mm or text with unit; a blank is 0
 * @param height Height along the pull, mm or text with unit
 * @returns Draft per side, degrees
 */
export function draftAngle(offset: any, height: any): any {
  return cell('DRAFT.ANGLE', [offset, height]);
}

/**
 * Height at which draft has used up an offset per side, mm.
 * @customfunction DRAFT.HEIGHT
 * @param offset Offset per side that may be used up, mm or text with unit; a blank is 0
 * @param draft Draft per side, degrees or text, above 0
 * @returns Height, mm
 */
export function draftHeight(offset: any, draft: any): any {
  return cell('DRAFT.HEIGHT', [offset, draft]);
}

/**
 * Size of a feature drafted on both sides at a distance from the end that holds it, mm.
 * @customfunction DRAFT.SIZE
 * @param size Size where it is held, mm or text with unit
 * @param distance Distance along the pull from the end that holds the size, mm; a blank is 0
 * @param draft Draft per side, degrees or text; write "0°" for none, a blank or bare 0 is refused
 * @param direction "grows" or "shrinks", seen from the end that holds the size
 * @returns Size at that distance, mm
 */
export function draftSize(size: any, distance: any, draft: any, direction: any): any {
  return cell('DRAFT.SIZE', [size, distance, draft, direction]);
}

/**
 * Draft per side that a textured wall needs, degrees: base draft + what the depth of the texture adds.
 * @customfunction DRAFT.TEXTURE
 * @param base Draft per side without texture, degrees or text; a blank is 0
 * @param texture_depth Depth of the texture, mm or text, "25 µm"; a blank is 0
 * @param [per_step] Draft per 0.025 mm of depth, degrees or text; 1.5 if omitted
 * @returns Draft per side, degrees
 */
export function draftTexture(base: any, texture_depth: any, per_step?: any): any {
  return cell('DRAFT.TEXTURE', [base, texture_depth, per_step]);
}
