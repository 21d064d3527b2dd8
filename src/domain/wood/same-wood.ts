/** One wood under two names: the name by which its movement is tabled, then the name in the table of shrinkage or hardness. */
const otherNames: Readonly<Record<string, readonly string[]>> = {
  'Cedar, yellow (Alaska)': ['Cedar, yellow'],
  'Andiroba (crabwood)': ['Andiroba'],
  'Apitong (keruing)': ['Keruing'],
  'Khaya (African mahogany)': ['Mahogany, African'],
  'Mahogany (American)': ['Mahogany, true'],
  'Parana pine': ['Parana-pine'],
  'Oak, red, commercial': ['Oak, red, northern red'],
  'Oak, white, commercial': ['Oak, white, white'],
  'Oak, white, Oregon white': ['Oak, Oregon white'],
  'Courbaril (jatoba)': ['Courbaril'],
  'Balata (bulletwood)': ['Bulletwood'],
  'Ocote pine': ['Pine, ocote'],
};

/** Every name of a wood, its own first. */
export const namesOf = (tabled: string): readonly string[] => [tabled, ...(otherNames[tabled] ?? [])];
