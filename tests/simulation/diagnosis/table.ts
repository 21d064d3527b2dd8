import { type Count, share, type Tally, type Tenth } from './tally.ts';

const percent = (count: Count): string => (count.of === 0 ? '-' : `${(100 * share(count)).toFixed(1)} %`);
const both = (a: Count, b: Count): string => `${percent(a)} / ${percent(b)}`;
const tenth = ({ from, came }: Tenth): string =>
  `${from.toFixed(1)}-${(from + 0.1).toFixed(1)}: ${percent(came)} of ${came.of}`;

/** A tally as lines of text. */
export const tableOf = (tally: Tally): string => {
  const after = (moves: number) => percent(tally.rightAfter[moves - 1] ?? { hits: 0, of: 0 });
  const ruins = Object.entries(tally.ruins)
    .filter(([, times]) => times > 0)
    .map(([ruin, times]) => `${ruin} ${times}`)
    .join(', ');
  return [
    `first cause is a true one / one of the first two    ${both(tally.firstTrue, tally.oneOfTwoTrue)} of ${tally.firstTrue.of}`,
    `the same, where all lists name every true cause     ${both(tally.firstTrueCommon, tally.oneOfTwoTrueCommon)} of ${tally.firstTrueCommon.of}`,
    `"likely" said / then a true cause                   ${both(tally.likelySaid, tally.likelyTrue)}`,
    `right after at most 1 / 2 / 3 / 6 moves             ${after(1)} / ${after(2)} / ${after(3)} / ${after(6)}`,
    `called right with a fault left / nothing to advise  ${both(tally.wrongly, tally.stuck)}`,
    `parts ruined                                        ${tally.ruined.hits} of ${tally.boxes}${ruins && `: ${ruins}; boxes ${tally.ruinedBoxes.slice(0, 12).join(' ')}`}`,
    `cuts without a setting                              ${tally.cutsWithoutSetting}`,
    `new tenons / of them needless                       ${tally.newTenons} / ${tally.needless}${tally.needless > 0 ? `: boxes ${tally.needlessBoxes.slice(0, 12).join(' ')}` : ''}`,
    `questions a box / moves a box                       ${tally.questionsPerBox.toFixed(2)} / ${(tally.moves / tally.boxes).toFixed(2)}`,
    `advice, ms: median / 95 in 100 under                ${tally.milliseconds.median.toFixed(2)} / ${tally.milliseconds.most95.toFixed(2)}`,
    `seconds                                             ${tally.seconds.toFixed(0)}`,
  ].join('\n');
};

/** What stands behind the table: calibration, and where it is weak. */
export const detailsOf = (tally: Tally): string =>
  [
    'A move given this chance worked in:',
    ...tally.chances.map((each) => `  ${tenth(each)}`),
    'A first cause given this share was a true one in:',
    ...tally.sharesTrue.map((each) => `  ${tenth(each)}`),
    'and the weightiest in:',
    ...tally.sharesMain.map((each) => `  ${tenth(each)}`),
    'Right after 3 moves, by what had happened:',
    ...tally.byUpset.map(([name, right]) => `  ${name.padEnd(28)} ${percent(right)} of ${right.of}`),
    'By the weightiest true cause: first named / right after 3:',
    ...tally.byCause.map(
      ([name, { firstTrue, right }]) => `  ${name.padEnd(28)} ${both(firstTrue, right)} of ${right.of}`,
    ),
    'Moves made, and how many of them set the lid right:',
    ...tally.moveKinds.map(([kind, came]) => `  ${kind.padEnd(28)} ${came.of} (${percent(came)})`),
  ].join('\n');
