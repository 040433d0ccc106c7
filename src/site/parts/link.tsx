import type { ComponentChildren, VNode } from 'preact';
import type { BookOption, BookRoom, BookSelection } from '../../core/book/index.js';
import { optionPath, recordPath, roomPath, selectionPath } from '../paths.js';
import { useLink, useView } from '../sheet-context.js';

/** A link to a page of the book, by its path in the book. */
export function PageLink({
  to,
  class: className,
  title,
  children,
}: {
  to: string;
  class?: string;
  title?: string;
  children: ComponentChildren;
}): VNode {
  const link = useLink();
  return (
    <a href={link(to)} class={className} title={title}>
      {children}
    </a>
  );
}

export function RoomLink({ room }: { room: Pick<BookRoom, 'slug' | 'number' | 'name'> }): VNode {
  return (
    <PageLink to={roomPath(room)}>
      <span class="mark">{room.number}</span> {room.name}
    </PageLink>
  );
}

export function OptionLink({ option }: { option: BookOption }): VNode {
  return <PageLink to={optionPath(option)}>{option.name}</PageLink>;
}

export function SelectionLink({
  selection,
  children,
}: {
  selection: BookSelection;
  children: ComponentChildren;
}): VNode {
  return <PageLink to={selectionPath(selection)}>{children}</PageLink>;
}

/** To the page that sets the options of a place side by side, where there is one. */
export function ChoiceLink({
  selection,
  class: className = 'onward',
  children = 'Options side by side',
}: {
  selection: BookSelection;
  class?: string;
  children?: ComponentChildren;
}): VNode | null {
  const path = useView().choicePath(selection);
  if (path === undefined) return null;
  return (
    <PageLink to={path} class={className}>
      {children}
    </PageLink>
  );
}

/** The one way from what people read to the record behind it: which file and line that is says its title. */
export function RecordLink({
  source,
  line,
  children,
}: {
  source: string;
  line?: number;
  children?: ComponentChildren;
}): VNode | null {
  if (!useView().hasRecords) return null;
  return (
    <PageLink
      to={recordPath(source, line)}
      class="record-link"
      title={line === undefined ? source : `${source}, line ${line}`}
    >
      {children ?? 'The record as written'}
    </PageLink>
  );
}

/** Where a selection is written, and the finish set that its room has it from. */
export function SelectionSource({
  selection: { finishSet, source, line },
}: {
  selection: Pick<BookSelection, 'finishSet' | 'source' | 'line'>;
}): VNode {
  const { hasRecords } = useView();
  return (
    <>
      {finishSet !== undefined && `From the finish set “${finishSet}”${hasRecords ? ', ' : ''}`}
      <RecordLink source={source} line={line} />
    </>
  );
}
