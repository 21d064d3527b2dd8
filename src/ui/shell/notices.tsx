import './notices.css';
import { late } from '../../app/ask.ts';
import { dismiss, failures } from '../../app/failure.ts';
import { isInMemory } from '../../app/start.ts';
import { failureActs, failureCauses, noticeWords as words } from './notice-words.ts';
import { hrefTo } from './route.ts';

/** What failed and what is waited for: above every screen, as high as it needs to be, which `--notices` tells the others. */
const Notices = () => {
  const waits = late.value;
  const reason = waits.find((wait) => wait.reason)?.reason;
  const isStuck = waits.some((wait) => wait.isStuck);
  // While it is asked again anyway, nobody needs to be told to try again.
  const cause = reason && (isStuck || reason !== 'lost') ? failureCauses[reason] : null;
  return (
    <div
      ref={(element) =>
        document.documentElement.style.setProperty('--notices', `${element?.offsetHeight ?? 0}px`)
      }
    >
      {isInMemory.value && (
        <div class="failure" role="status">
          <p>
            {words.inMemory} <a href={hrefTo('shop', 'backups')}>{words.export}</a>
          </p>
        </div>
      )}
      {failures.value.map(({ act, of, reason: why }) => (
        <div key={`${act} ${of}`} class="failure" role="alert">
          <p>
            {failureActs[act]} {failureCauses[why]}
          </p>
          <button type="button" onClick={() => dismiss(act, of)}>
            {words.dismiss}
          </button>
        </div>
      ))}
      {waits.length > 0 && (
        <div class="failure" role="status">
          <p>
            {isStuck ? words.stuck : words.waiting} {cause}
            {isStuck && <a href="./rescue.html">{words.rescue}</a>}
          </p>
          {isStuck && (
            <button type="button" onClick={() => location.reload()}>
              {words.reload}
            </button>
          )}
        </div>
      )}
    </div>
  );
};
export default Notices;
