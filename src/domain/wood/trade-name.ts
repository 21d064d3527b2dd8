/** Table names that the rule below would spoil. */
const spoilt: Readonly<Record<string, string>> = {
  'Oak, red, commercial': 'Red oak',
  'Oak, white, commercial': 'White oak',
  'Oak, white, white': 'Eastern white oak',
  'Oak, white, Oregon white': 'Oregon white oak',
  'Oak, black': 'Black oak (California)',
  'Oak, red, California': 'California red oak',
  'Oak, red: water, laurel, willow': 'Water, laurel and willow oak',
  'Magnolia, cucumbertree': 'Cucumbertree',
  'Cottonwood, balsam poplar': 'Balsam poplar',
  'Hickory, true': 'Hickory',
  'Hickory, pecan': 'Pecan hickory',
};

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
const small = (word: string): string =>
  word.startsWith('Douglas') ? word : word.charAt(0).toLowerCase() + word.slice(1);

/** Words that only sort a tree's kinds into families; nobody says them. */
const sorting = new Set(['red', 'white', 'true', 'pecan']);

/**
 * What a turner calls a wood that the tables list tree first: "Maple, sugar" is sugar maple, "Oak, red, northern red" northern red oak,
 * "Oak, white, live" live oak, "Cedar, eastern redcedar" eastern redcedar.
 */
export const tradeName = (tabled: string): string => {
  const told = spoilt[tabled];
  if (told !== undefined) return told;
  const [, plain = tabled, aside = ''] = /^(.*?)( \(.*\))?$/.exec(tabled) ?? [];
  const [tree = '', ...kinds] = plain.split(', ');
  const said = kinds.length > 1 && sorting.has(kinds[0] ?? '') ? kinds.slice(1) : kinds;
  const kind = said.reverse().join(' ');
  const whole = kind.endsWith(small(tree)) ? kind : `${kind} ${small(tree)}`.trim();
  return capital(whole) + aside;
};
