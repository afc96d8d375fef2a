import { SITE_NAME } from '../frame/site-name.ts';
import { placeAlong } from '../maths/plate/edge-parts.ts';
import type { Edge } from '../maths/plate/land-outline.ts';
import type { Drawing, Layer, Shape } from './shapes.ts';
import { slotOutline } from './shapes.ts';

const layers: Readonly<Record<Layer, { name: string; colour: number; lineType: string }>> = {
  cut: { name: 'CUT', colour: 7, lineType: 'CONTINUOUS' },
  centre: { name: 'CENTRE', colour: 1, lineType: 'CHAIN' },
  mark: { name: 'MARK', colour: 7, lineType: 'CONTINUOUS' },
  position: { name: 'POSITION', colour: 1, lineType: 'CONTINUOUS' },
  scrap: { name: 'SCRAP', colour: 8, lineType: 'CHAIN2' },
  text: { name: 'TEXT', colour: 3, lineType: 'CONTINUOUS' },
  dimension: { name: 'DIMENSION', colour: 3, lineType: 'CONTINUOUS' },
  proving: { name: 'PROVING', colour: 5, lineType: 'CONTINUOUS' },
};

/** A millionth of a millimetre is enough, and keeps exponents out of the file. */
const tidy = (value: number): number => Number(value.toFixed(6)) + 0;
const turned = (angle: number): number => tidy(((angle % 360) + 360) % 360);

/** How an edge of a polyline bends: the tangent of a quarter of its angle, negative clockwise. */
function bulgeOf(edge: Edge): number {
  if (edge.kind === 'line') return 0;
  const bulge = Math.tan(((edge.to - edge.from) * Math.PI) / 720);
  return Number((edge.hollow ? -bulge : bulge).toFixed(9));
}

/**
 * The drawing as a DXF file in mm, each of its layers a layer of the file. The library is fetched
 * only when a file is wanted. The same drawing always gives the same text.
 */
export async function toDxf(drawing: Drawing): Promise<string> {
  const library = await import('@tarikjabiri/dxf');
  const { DxfWriter, LWPolylineFlags, TextHorizontalAlignment, TextVerticalAlignment } = library;
  const { Units, point2d, point3d } = library;
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Millimeters);
  // The library would put its own name there.
  dxf.setVariable('$LASTSAVEDBY', { 1: SITE_NAME });
  dxf.addLType('CHAIN', '____ _ ____', [4, -1, 0.5, -1]);
  dxf.addLType('CHAIN2', '____ _ _ ____', [4, -1, 0.5, -1, 0.5, -1]);
  const used = new Set(drawing.shapes.map((shape) => shape.layer));
  for (const layer of used) {
    const { name, colour, lineType } = layers[layer];
    dxf.addLayer(name, colour, lineType);
  }
  const place = (x: number, y: number) => point3d(tidy(x), tidy(y), 0);

  const add = (shape: Shape): void => {
    const layerName = layers[shape.layer].name;
    switch (shape.kind) {
      case 'circle':
        dxf.addCircle(place(shape.x, shape.y), tidy(shape.radius), { layerName });
        return;
      case 'line':
        dxf.addLine(place(shape.x1, shape.y1), place(shape.x2, shape.y2), { layerName });
        return;
      case 'arc':
        dxf.addArc(
          place(shape.x, shape.y),
          tidy(shape.radius),
          turned(shape.from),
          turned(shape.to),
          { layerName },
        );
        return;
      case 'slot':
        slotOutline(shape).forEach(add);
        return;
      case 'path':
        dxf.addLWPolyline(
          shape.edges.map((edge) => {
            const { x, y } = placeAlong(edge, 0);
            return { point: point2d(tidy(x), tidy(y)), bulge: bulgeOf(edge) };
          }),
          { layerName, flags: LWPolylineFlags.Closed },
        );
        return;
      case 'text': {
        const spot = place(shape.x, shape.y);
        const alignment = {
          start: TextHorizontalAlignment.Left,
          middle: TextHorizontalAlignment.Center,
          end: TextHorizontalAlignment.Right,
        }[shape.anchor];
        dxf.addText(spot, tidy(shape.height), shape.text, {
          layerName,
          rotation: tidy(shape.turn),
          horizontalAlignment: alignment,
          verticalAlignment: TextVerticalAlignment.BaseLine,
          secondAlignmentPoint: spot,
        });
      }
    }
  };
  drawing.shapes.forEach(add);
  return dxf.stringify();
}
