import { go } from './route.ts';
import { shellWords as words } from './words.ts';

/** Says that the log on screen is invented, with the one tap that ends it. */
export const DemoNote = () => (
  <aside class="demo-note">
    <span>{words.demo}</span>
    <button
      type="button"
      onClick={async () => {
        const { leaveDemo } = await import('../../app/demo.ts');
        await leaveDemo();
        go('bench');
      }}
    >
      {words.leaveDemo}
    </button>
  </aside>
);
