import { hrefTo } from '../../shell/route.ts';
import { shopWords } from '../words.ts';
import { safetyWords as words } from './words.ts';

const Safety = () => (
  <main class="page shop">
    <a href={hrefTo('shop')}>{shopWords.back}</a>
    <h1>{words.title}</h1>
    <p>{words.first}</p>
    {words.parts.map(({ title, rules }) => (
      <section key={title}>
        <h2>{title}</h2>
        <ul>
          {rules.map((rule) => (
            <li key={rule}>{rule}</li>
          ))}
        </ul>
      </section>
    ))}
  </main>
);

export default Safety;
