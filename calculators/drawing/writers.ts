/** What writes each kind of file: fetched when one is wanted. */
export const pdf = () => import('./to-pdf.ts');
export const svg = () => import('./to-svg.ts');
export const dxf = () => import('./to-dxf.ts');
