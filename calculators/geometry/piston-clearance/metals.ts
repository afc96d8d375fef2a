import { expansions } from '../../maths/cylinder/expansion.ts';

/** Usual metals, and the field that each fills in. */
export const metals = [
  { key: 'bore-expansion', name: 'Iron bore', value: expansions.iron },
  { key: 'bore-expansion', name: 'Aluminium bore', value: expansions.aluminium },
  { key: 'piston-expansion', name: 'Cast piston', value: expansions.piston },
  { key: 'piston-expansion', name: 'Silicon-rich piston', value: expansions.siliconPiston },
  { key: 'piston-expansion', name: 'Forged piston', value: expansions.forgedPiston },
] as const;
