/** Where the figures come from, in the order they are met. */
export const sourceWords = {
  title: 'Sources',
  licences: 'Licences of the software inside',
  lead: 'Three kinds of figure: measured by you, worked out from them by geometry, and taken from handbooks. What is only common practice says so.',
  list: [
    {
      what: 'Thread geometry',
      from: 'Worked out here and checked against a brute-force simulation of the cutter’s sweep; basic ratios from ISO 68-1, basic sizes from ISO 724 and ASME B1.1, three-wire examples from ASME B1.2.',
    },
    {
      what: 'How woods move',
      from: 'Wood Handbook, USDA Forest Products Laboratory, FPL-GTR-190 (2010) and FPL-GTR-282 (2021): Table 13-5 (change coefficients), Tables 4-3 and 4-4 (shrinkage). Averages: one board may differ by a quarter.',
    },
    {
      what: 'Moisture and humidity',
      from: 'Wood Handbook, equation 4-5 and Table 4-2. Derived mainly for Sitka spruce; good for trends.',
    },
    {
      what: 'Hardness',
      from: 'Wood Handbook FPL-GTR-282, Tables 5-3 and 5-5: side hardness at 12 % moisture.',
    },
    {
      what: 'Statistics',
      from: 'Wilson intervals and Newcombe’s differences: R. G. Newcombe, Statistics in Medicine 17 (1998). Exact test: R. A. Fisher (1935). Relative risk: O. Miettinen and M. Nurminen, Statistics in Medicine 4 (1985). Odds over groups: N. Mantel and W. Haenszel (1959), interval of Robins, Breslow and Greenland (1986). Steps that are often followed by trouble: D. Firth, Biometrika 80 (1993). Many steps at once: S. Holm (1979), Y. Benjamini and Y. Hochberg (1995).',
    },
    {
      what: 'Letter size',
      from: 'ISO 9241-303: capitals of 20 to 22 minutes of arc. A bank card is 85.60 mm long: ISO/IEC 7810, ID-1.',
    },
    {
      what: 'Set-up, default clearances, wall, what a hand can feel',
      from: 'Common practice, no source.',
    },
  ],
} as const;
