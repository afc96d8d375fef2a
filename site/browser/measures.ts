/** Units and the words that follow a figure as one, the longer before the shorter that begin them. */
export const UNITS = [
  'mm²|mm/s|mm|cm³|cm|cc|cu in|in²|in|thou|ft|metres?|m/s|m',
  'litres?|ml|l|km|kg/m³|kg|gf|g/cc|grams?|g|kPa|hPa|psi|bar|°C|degrees?|per cent|‰',
  'ms|minutes?|min|hours?|seconds?|s/m|s|h|days?|turns?|revolutions|rpm|Hz',
  'newton metres|newtons?|thousandths|decibels|amperes?|Ah|A|volts?|V|megohms?|ohms?|MΩ|mΩ|kΩ|Ω|mH|µF|mJ|W|N m|N/m|N|dB\\(A\\)',
].join('|');
const FIGURE = String.raw`[−-]?\d+(?:[.,/]\d+)*`;
/** What bears a number as its name: “set 2”, “ISO 273:1979”; and a firing order, “1-3-2”. */
const NUMBERED = String.raw`(?:(?:[Ss]et|[Cc]ylinder|[Hh]ole|[Pp]in|[Ss]tep|[Ss]lide|[Cc]able|[Cc]oil|[Jj]et|[Tt]rial|[Hh]e(?:ad|ight)|[Cc]arburettor|[Cc]ondenser) \d{1,2}|(?:ISO|IEC|DIN|BS|EN|JCGM) [\d:–-]*\d|\d{1,2}(?:-\d{1,2})+)(?!\d|[.,/°%]\d|[°%]|\s(?:${UNITS}|±|:|[−+×/=] ))`;
/** What a sign says at the end of a name: “Error as found, + early”. */
const SIGNED = String.raw`(?<=, )[+−] \p{Ll}+`;
/** A figure with its unit, and with its ± where it has one; a ratio to one is held together alike, and
 * so is a ± by itself, a name with its number, and a sign with the word that it stands for. */
const MEASURE = new RegExp(
  String.raw`(?<![\p{L}\d.,/]|\d ± |[−-])((?:± ?|\+)?${FIGURE}(?: ± ${FIGURE})? (?:${UNITS}|: 1)|(?:${FIGURE} )?± ${FIGURE}(?:\u00A0(?:${UNITS})|[°%]?(?![.,]?\d|\s\p{L}))|${SIGNED}|${NUMBERED})(?![\p{L}\d²³/])`,
  'u',
);

/** A text in pieces: every second one, from the second on, is a figure with its unit or a name with its number. */
export const measuresApart = (text: string): string[] =>
  // Most texts hold neither figure nor sign, which is seen at once.
  /[\d+−]/u.test(text) ? text.split(MEASURE) : [text];
