import './findings.css';
import { useEffect } from 'preact/hooks';
import { cancelFindings, findings, findingsState, reckonFindings } from '../../app/findings.ts';
import { isInMemory } from '../../app/start.ts';
import { Lazy } from '../shell/lazy.tsx';
import { hrefTo } from '../shell/route.ts';
import { momentWords } from '../words/day.ts';
import { findingsWords as words } from './words.ts';

/** What the log says, words first, numbers one tap away. */
const Findings = () => {
  const state = findingsState();
  useEffect(() => {
    reckonFindings();
  }, [state]);
  const now = findings.value;
  if (isInMemory.value)
    return (
      <main class="page findings">
        <h1>{words.title}</h1>
        <p>{words.inMemory}</p>
      </main>
    );
  return (
    <main class="page findings" aria-busy={now.is === 'asked' && now.share !== null}>
      <h1>{words.title}</h1>
      <Reckoning />
      <Found />
    </main>
  );
};

/** How far it is, and what to do when it came to nothing. */
const Reckoning = () => {
  const again = () => reckonFindings();
  const now = findings.value;
  const moment = 'asOf' in now && now.asOf && momentWords(now.asOf);
  if (now.is === 'failed')
    return (
      <>
        <p role="alert">{words.failed}</p>
        <button type="button" onClick={again}>
          {words.tryAgain}
        </button>
      </>
    );
  if (now.is === 'stopped')
    return (
      <div class="row">
        <p role="status">{moment ? words.stoppedAsOf(moment) : words.stopped}</p>
        <button type="button" onClick={again}>
          {words.again}
        </button>
      </div>
    );
  if (now.is === 'asked' && now.share !== null)
    return (
      <div class="row">
        <p role="status">{moment ? words.progressAsOf(now.share, moment) : words.progress(now.share)}</p>
        <button type="button" onClick={cancelFindings}>
          {words.cancel}
        </button>
      </div>
    );
  return null;
};

const Found = () => {
  const { found } = findings.value;
  if (!found) return null;
  if (found.rows > 0) return <Lazy key="found" load={() => import('./found.tsx')} props={{ found }} />;
  return (
    <>
      <p>{words.none}</p>
      <a href={hrefTo('bench')}>{words.toBench}</a>
      <p class="soft">{words.leftOut(found.leftOut)}</p>
    </>
  );
};

export default Findings;
