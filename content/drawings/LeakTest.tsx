import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

/** The middle of the crankshaft, the middle of the bore, and the deck. */
const [CX, CY] = [150, 336] as const;
const DECK = 78;
const [LEFT, RIGHT] = [CX - 50, CX + 50];
/** The flange of the ports, and the pipe to gauge and pump. */
const [OUT, PIPE] = [RIGHT + 43, 308];

/** Crankcase and cylinder with every opening shut, a gauge and a hand pump on the exhaust's plate. */
export default function LeakTest() {
  return (
    <LineDrawing
      id="leak-test"
      title="Crankcase and cylinder shut for the leak test"
      description="An engine cut through cylinder and crankcase, the piston at the bottom, so that the transfer passage joins case and cylinder. The plug is in the head. A plate with rubber under it shuts the inlet, another the exhaust. From the exhaust’s plate a pipe leads to a gauge and, through a tap, to a hand pump. Crank seals and joints are what is tested. Everything but plug, plates and pipe is the engine as it runs."
      height={446}
    >
      <Hatching id="leak-head" leans="left" />
      <Hatching id="leak-barrel" />
      <Cut
        d={`M${LEFT - 42} ${DECK}V48H${CX - 9}V${DECK - 12}H${LEFT + 14}V${DECK}ZM${RIGHT + 42} ${DECK}V48H${CX + 9}V${DECK - 12}H${RIGHT - 14}V${DECK}Z`}
        hatching="leak-head"
      />
      <Cut
        d={
          `M${LEFT - 42} ${DECK}H${LEFT}V146H${LEFT - 30}V${CY}A80 80 0 0 0 ${CX + 80} ${CY}V236H${RIGHT}V222H${RIGHT + 42}V${CY}A92 92 0 0 1 ${CX - 92} ${CY}Z` +
          `M${LEFT} 164V236H${LEFT - 14}V164Z` +
          `M${RIGHT} ${DECK}H${RIGHT + 42}V124H${RIGHT}Z` +
          `M${RIGHT} 160H${RIGHT + 42}V184H${RIGHT}Z`
        }
        hatching="leak-barrel"
      />
      <path
        class="part part-moving"
        d={`M${CX - 8} 20V30H${CX - 14}V44H${CX - 8}V${DECK - 12}H${CX + 8}V44H${CX + 14}V30H${CX + 8}V20Z`}
      />
      <circle class="edge edge-filled" cx={CX} cy={CY} r={62} />
      <circle class="edge edge-filled" cx={CX} cy={CY} r={13} />
      <path class="part-rod" d={`M${CX} ${CY + 32}V240`} />
      <circle class="edge edge-filled" cx={CX} cy={CY + 32} r={11} />
      <path class="edge edge-filled" d={`M${LEFT + 2} 164H${RIGHT - 2}V248H${LEFT + 2}Z`} />
      <path class="joint" d={`M${OUT} 114h4v58h-4zM${OUT} 178h4v50h-4z`} />
      <path class="part part-moving" d={`M${OUT + 4} 114h8v58h-8zM${OUT + 4} 178h8v50h-8z`} />
      <path class="edge" d={`M${OUT + 12} 142H${PIPE}M${PIPE} 106V224`} />
      <circle class="joint" cx={PIPE} cy={142} r={3} />
      <circle class="edge edge-filled" cx={PIPE} cy={86} r={20} />
      <path class="edge edge-thin" d={`M${PIPE} 86l10 -11`} />
      <path class="edge edge-filled" d={`M${PIPE - 8} 166h16l-16 24h16z`} />
      <path class="edge" d={`M${PIPE} 178h16`} />
      <path class="edge edge-filled" d={`M${PIPE - 15} 224h30v64h-30z`} />
      <path class="edge" d={`M${PIPE} 268v46M${PIPE - 14} 314h28M${PIPE - 15} 268h30`} />
      <Label words="plug" at={[196, 16]} to={[CX + 10, 36]} />
      <Label words="transfer passage" at={[4, 16]} to={[LEFT - 22, 196]} />
      <Label words="gauge" at={[PIPE, 52]} anchor="middle" />
      <Label words="tap" at={[352, 202]} anchor="end" to={[PIPE + 14, 178]} ends="arrow" />
      <Label words="hand pump" at={[352, 334]} anchor="end" to={[PIPE + 8, 250]} />
      <Label words="piston, at" at={[CX, 182]} anchor="middle" />
      <Label words="the bottom" at={[CX, 198]} anchor="middle" />
      <Label words="plate on" at={[262, 366]} to={[OUT + 8, 220]} />
      <Label words="rubber" at={[262, 382]} />
      <Label words="crank seals," at={[262, 414]} to={[CX + 9, CY + 4]} />
      <Label words="on both sides" at={[262, 430]} />
    </LineDrawing>
  );
}
