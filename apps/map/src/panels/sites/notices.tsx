import type { ComponentChildren } from 'preact';
import { nameOf } from '../../keep/describe.js';
import { desk } from '../../keep/desk.js';
import * as keep from '../../keep/keep-state.js';
import { useNewVersion } from '../../keep/offline.js';
import { saveFile } from '../../keep/save-file.js';
import { words } from '../../words/words.js';

const w = () => words.value.keep;

interface NoticeProps {
  readonly name: string;
  readonly grave?: boolean;
  readonly text: string;
  readonly children: ComponentChildren;
}

function Notice({ name, grave = false, text, children }: NoticeProps) {
  return (
    <div class={`notice notice-${name}${grave ? ' notice-grave' : ''}`} role={grave ? 'alert' : 'status'}>
      <p>{text}</p>
      <div class="notice-buttons">{children}</div>
    </div>
  );
}

function Button({ text, act }: { readonly text: string; readonly act: () => void }) {
  return (
    <button type="button" class="button" onClick={act}>
      {text}
    </button>
  );
}

function Unsaved() {
  const unsaved = keep.unsaved.value;
  if (!unsaved) return null;
  const { title, why, saveFile: save, again } = w().unsaved;
  return (
    <Notice name="unsaved" grave={true} text={`${title(nameOf(unsaved.site))} ${why[unsaved.why]}`}>
      <Button text={save} act={() => saveFile(unsaved.site)} />
      <Button text={again} act={() => void desk().keeper.flush()} />
    </Notice>
  );
}

function StandsBack() {
  const why = keep.standsBack.value;
  if (!why) return null;
  return (
    <Notice name="stands-back" grave={true} text={w().standsBack[why]}>
      <Button text={w().standsBack.takeOver} act={() => void desk().keeper.takeOver()} />
      <Button text={w().standsBack.asCopy} act={() => void desk().keeper.keepAsCopy()} />
    </Notice>
  );
}

function Older() {
  const name = keep.openedOlder.value;
  if (name === null) return null;
  const close = () => {
    keep.openedOlder.value = null;
  };
  return (
    <Notice name="older" text={w().older(name)}>
      <Button text={w().close} act={close} />
    </Notice>
  );
}

function NewVersion() {
  if (!keep.newVersion.value) return null;
  return (
    <Notice name="version" text={w().newVersion.ready}>
      <Button text={w().newVersion.use} act={useNewVersion} />
    </Notice>
  );
}

/** What stays in sight until it is solved: under the name of the site, over nothing else. */
export function Notices() {
  return (
    <>
      <Unsaved />
      <StandsBack />
      <Older />
      <NewVersion />
    </>
  );
}
