import { diagnose } from '../../src/domain/diagnosis/diagnose.ts';
import type { DiagnosisQuestion } from '../../src/workers/diagnosis-message.ts';

/** happy-dom has no workers: this one answers as `src/workers/diagnosis.ts` does, on the page. */
class WorkerOnThePage extends EventTarget {
  postMessage({ id, view }: DiagnosisQuestion): void {
    setTimeout(() =>
      this.dispatchEvent(new MessageEvent('message', { data: { id, diagnosis: diagnose(view) } })),
    );
  }
  terminate(): void {}
}
globalThis.Worker = WorkerOnThePage as unknown as typeof Worker;
