import { bringBack, replacedVersions } from '../../../app/superseded.ts';
import type { Superseded } from '../../../storage/schema.ts';
import { useLive } from '../../parts/use-live.ts';
import { momentWords } from '../../words/day.ts';
import { shopWords } from '../words.ts';

const words = shopWords.backups;

/** What lost to a later version when two phones met; it can be brought back for 30 days. */
export const Replaced = () => {
  const versions = useLive(replacedVersions, ['box', 'rig', 'procedure']).value;
  if (!versions) return null;
  return (
    <details>
      <summary>{words.replaced}</summary>
      {versions.length === 0 ? (
        <p>{words.replacedNone}</p>
      ) : (
        <ul>
          {versions.map((version) => (
            <li key={`${version.kind} ${version.id} ${version.rev} ${version.writer}`}>
              {words.replacedRow(nameOf(version), momentWords(version.supersededAt))}{' '}
              <button type="button" onClick={() => bringBack(version)}>
                {words.restore}
              </button>
            </li>
          ))}
        </ul>
      )}
    </details>
  );
};

const nameOf = ({ kind, body }: Superseded): string => {
  if (body === null) return kind;
  if ('number' in body) return `box ${body.number}`;
  return `${kind} “${'name' in body ? body.name : body.sentence}”`;
};
