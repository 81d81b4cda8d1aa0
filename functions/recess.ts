import { cell } from './cell';

/**
 * Diameter of the recess around a screw head, mm: head + allowance, plus draft on both sides.
 * @customfunction RECESS.DIAMETER
 * @param head_diameter Head diameter, mm or text; "M3 pan" reads its largest
 * @param allowance Allowance on diameter, mm or text with unit; a blank is 0
 * @param [distance] Distance from the recess floor outwards, mm or text with unit; 0 if omitted
 * @param [draft] Draft per side of the recess, degrees or text; 0 if omitted
 * @returns Recess diameter, mm
 */
export function recessDiameter(head_diameter: any, allowance: any, distance?: any, draft?: any): any {
  return cell('RECESS.DIAMETER', [head_diameter, allowance, distance, draft]);
}

/**
 * Recess diameter at the floor that a shifted head never touches, mm.
 * The screw may shift by its play in the hole.
 * @customfunction RECESS.FLOAT
 * @param head_diameter Head diameter, mm or text; "M3 pan" reads its largest
 * @param hole Clearance hole, mm or text; "M3 medium" reads its largest
 * @param screw Screw diameter, mm or text; "M3" reads its smallest major diameter
 * @param margin Room left per side, mm or text with unit; a blank is 0
 * @returns Recess diameter, mm
 */
export function recessFloat(head_diameter: any, hole: any, screw: any, margin: any): any {
  return cell('RECESS.FLOAT', [head_diameter, hole, screw, margin]);
}

/**
 * Depth of the recess from the outer face to the head seat, mm: board plane − seat.
 * @customfunction RECESS.DEPTH
 * @param board_plane Outer face to the underside of the board, mm or text with unit
 * @param seat Thickness of the seat under the head, mm or text with unit; a blank is 0
 * @returns Recess depth, mm
 */
export function recessDepth(board_plane: any, seat: any): any {
  return cell('RECESS.DEPTH', [board_plane, seat]);
}

/**
 * Seat left under the head, mm: board plane − recess depth.
 * @customfunction RECESS.SEAT
 * @param board_plane Outer face to the underside of the board, mm or text with unit
 * @param depth Depth of the recess from the outer face, mm or text with unit; a blank is 0
 * @returns Seat, mm
 */
export function recessSeat(board_plane: any, depth: any): any {
  return cell('RECESS.SEAT', [board_plane, depth]);
}

/**
 * Least depth of the recess that hides the head, mm: head height + subflush.
 * @customfunction RECESS.DEPTH.MIN
 * @param head_height Head height, mm or text; "M3 pan" reads its largest
 * @param subflush How far the head must lie below the outer face, mm or text; a blank is 0
 * @returns Least recess depth, mm
 */
export function recessDepthMin(head_height: any, subflush: any): any {
  return cell('RECESS.DEPTH.MIN', [head_height, subflush]);
}

/**
 * How far the head lies below the outer face, mm; negative: it stands proud.
 * @customfunction RECESS.FLUSH
 * @param depth Depth of the recess from the outer face, mm or text with unit; a blank is 0
 * @param head_height Head height, mm or text; "M3 pan" reads its largest
 * @returns Head below the face, mm
 */
export function recessFlush(depth: any, head_height: any): any {
  return cell('RECESS.FLUSH', [depth, head_height]);
}

/**
 * Depth of a countersink from its sharp diameter down to the hole, mm.
 * @customfunction RECESS.CONE
 * @param sharp_diameter Theoretical sharp diameter, mm or text; "M3 countersunk" reads it
 * @param hole Clearance hole, mm or text; "M3 medium" reads its nominal
 * @param [angle] Included angle, degrees or text; that of the screw if omitted, needed for a number
 * @returns Countersink depth, mm
 */
export function recessCone(sharp_diameter: any, hole: any, angle?: any): any {
  return cell('RECESS.CONE', [sharp_diameter, hole, angle]);
}

/**
 * Room for the driver in the recess on diameter, mm, after a margin; negative: the driver does not go in.
 * @customfunction RECESS.TOOL
 * @param recess_diameter Recess diameter where the tool goes in, mm or text with unit
 * @param tool_diameter Outside of the tool, mm or text; "1/4 in hex" is taken across corners
 * @param [margin] Margin on diameter, mm or text; "0 mm" for none, a blank or 0 is 0.5; 0.5 if omitted
 * @returns Room on diameter, mm
 */
export function recessTool(recess_diameter: any, tool_diameter: any, margin?: any): any {
  return cell('RECESS.TOOL', [recess_diameter, tool_diameter, margin]);
}
