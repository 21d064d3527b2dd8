import type { ComponentChildren } from 'preact';
import { boxStory } from '../../app/box-story.ts';
import { trialToExplain } from '../../domain/box/open-trial.ts';
import type { Box } from '../../domain/box/records.ts';
import { standing, woodsOf } from '../../domain/box/story.ts';
import { LaterCheck } from '../bench/later-check.tsx';
import { goingOnWord, seatedWord, threadWord } from '../bench/trial/words.ts';
import { benchWords } from '../bench/words.ts';
import { JointLinks } from '../joint/joint-links.tsx';
import { Photos } from '../parts/photos.tsx';
import { useLive } from '../parts/use-live.ts';
import { partName } from '../set-up/words.ts';
import { Lazy } from '../shell/lazy.tsx';
import { hrefTo } from '../shell/route.ts';
import { dayWords, momentWords } from '../words/day.ts';
import { RunStory } from './run-story.tsx';
import { standingWord, boxesWords as words } from './words.ts';

/** A box from blank to shelf, as it was recorded. */
export const BoxStory = ({ id }: { id: string }) => {
  const story = useLive(boxStory, ['box', 'events', 'wood'], id).value;
  if (!story) return <main class="page" aria-busy="true" />;
  const { shown, nameOf } = story;
  if (!shown)
    return (
      <main class="page boxes">
        <h1>{words.noSuch}</h1>
        <a href={hrefTo('boxes')}>{words.back}</a>
      </main>
    );
  const { onHand, runs } = shown;
  const { box } = onHand;
  const explained = trialToExplain(box);
  return (
    <main class="page boxes">
      <a href={hrefTo('boxes')}>{words.back}</a>
      <h1>{benchWords.boxTitle(box.number, box.name)}</h1>
      <p class="soft">
        {woodsOf(box).map(nameOf).join(' / ')} · {standingWord[standing(box)]} · {dayWords(box.startedOn)}
      </p>
      {!box.closing && (
        <a class="act" href={hrefTo('bench')}>
          {words.onTheBench}
        </a>
      )}
      <Sizes box={box} nameOf={nameOf} />
      <JointLinks id={id} />
      {box.setUps.length > 0 && (
        <Part title={words.setUps}>
          {box.setUps.map(({ runId }) => {
            const run = runs.get(runId);
            return run && <RunStory key={runId} run={run} />;
          })}
        </Part>
      )}
      {box.cuts.length > 0 && (
        <Part title={words.cuts}>
          <ul>
            {box.cuts.map((cut) => (
              <li key={cut.id}>{words.cut(partName[cut.part], cut.depth.text, cut.correction)}</li>
            ))}
          </ul>
        </Part>
      )}
      {box.trials.length > 0 && (
        <Part title={words.trials}>
          <ol>
            {box.trials.map((trial) => (
              <li key={trial.id}>
                {trial.right
                  ? words.right
                  : [
                      ...trial.goingOn.map((key) => goingOnWord[key]),
                      ...(trial.seated ? [seatedWord[trial.seated]] : []),
                      ...trial.threads.map((key) => threadWord[key]),
                      ...(trial.endPlay ? [words.endPlay(trial.endPlay.text)] : []),
                    ].join(', ')}
              </li>
            ))}
          </ol>
        </Part>
      )}
      {explained && (
        <Lazy
          key={explained.id}
          load={() => import('./likely-causes.tsx')}
          props={{ id, trialId: explained.id }}
        />
      )}
      {box.closing && (
        <Part title={words.closing}>
          <p>
            {standingWord[box.closing.outcome]}, {words.hardener[box.closing.hardener]},{' '}
            {momentWords(box.closing.at)}
          </p>
          {box.closing.note && <p>{box.closing.note}</p>}
          <LaterCheck onHand={onHand} />
        </Part>
      )}
      {box.photos.length > 0 && (
        <Part title={words.photos}>
          <Photos boxId={onHand.id} photos={box.photos} />
        </Part>
      )}
    </main>
  );
};

const Part = ({ title, children }: { title: string; children: ComponentChildren }) => (
  <section>
    <h2>{title}</h2>
    {children}
  </section>
);

const Sizes = ({ box, nameOf }: { box: Box; nameOf: (wood: string) => string }) => {
  const { plan } = box;
  const rows: [string, string][] = [
    [words.lid, `${nameOf(plan.lid.wood)}, ${words.grain[plan.lid.grain]}`],
    [words.base, `${nameOf(plan.base.wood)}, ${words.grain[plan.base.grain]}`],
    ...(plan.insert ? [[words.insert(plan.insert.in), nameOf(plan.insert.wood)] as [string, string]] : []),
    [words.pitchIs, `${plan.pitch.text}, ${words.route[plan.route]}`],
    [words.opening, plan.opening.text],
    ...box.bore.map((reading): [string, string] => [
      words.bore(reading.where),
      [reading.along.text, reading.across?.text, reading.overCrests && words.overCrests]
        .filter(Boolean)
        .join(', '),
    ]),
    ...box.tenon.map((reading): [string, string] => [words.tenon(reading.where), reading.diameter.text]),
  ];
  return (
    <Part title={words.sizes}>
      <dl>
        {rows.map(([term, value]) => (
          <>
            <dt>{term}</dt>
            <dd>{value}</dd>
          </>
        ))}
      </dl>
    </Part>
  );
};
