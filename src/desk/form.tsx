import type { VNode } from 'preact';
import type { Ask, Field } from './ask.js';

/** What every form of the desk carries: that it is ours, which it is, and where it leads back to. */
export function SecretField({ secret, back, ask }: { secret: string; back: string; ask: string }): VNode {
  return (
    <>
      <input type="hidden" name="secret" value={secret} />
      <input type="hidden" name="ask" value={ask} />
      <input type="hidden" name="back" value={back} />
    </>
  );
}

/** A form that runs a command. It works without any script. */
export function AskForm({
  ask,
  secret,
  link,
  back,
}: {
  ask: Ask;
  secret: string;
  link: (to: string) => string;
  back: string;
}): VNode {
  return (
    <form
      method="post"
      action={link('desk/do')}
      class="desk-form"
      {...(ask.id.startsWith('choose/') && { 'data-remembers': '' })}
    >
      <SecretField secret={secret} back={back} ask={ask.id} />
      {ask.was !== undefined && <input type="hidden" name="was" value={ask.was} />}
      {ask.says !== undefined && <p>{ask.says}</p>}
      <div class="desk-fields">
        {ask.fields
          .filter(({ kind }) => kind !== 'picked')
          .map((field) => (
            <AskField field={field} ask={ask.id} />
          ))}
        <p>
          <button>{ask.button}</button>
        </p>
      </div>
    </form>
  );
}

function AskField({ field, ask }: { field: Field; ask: string }): VNode {
  const { name, label, hint, kind, choices = [], value, isOptional = false } = field;
  const id = `${ask}-${name}`.replaceAll(/[^a-z0-9]+/giu, '-');
  const common = { id, name, required: !isOptional, ...(hint !== undefined && { 'aria-describedby': `${id}-hint` }) };
  if (kind === 'one-of' && choices.length > 0 && choices.length <= 8 && name === 'option')
    return (
      <fieldset class="desk-choices">
        <legend>{label}</legend>
        {choices.map((one) => (
          <label class="desk-choice">
            <input type="radio" name={name} value={one.value} checked={one.value === value} required /> {one.label}
          </label>
        ))}
      </fieldset>
    );
  return (
    <p>
      <label for={id}>
        {label}
        {isOptional && <span class="desk-hint"> if known</span>}
      </label>
      {kind === 'one-of' && (
        <select {...common}>
          {choices.map((one) => (
            <option value={one.value} selected={one.value === value}>
              {one.label}
            </option>
          ))}
        </select>
      )}
      {kind === 'lines' && <textarea {...common} rows={field.rows ?? 2} />}
      {kind === 'line' && <input {...common} value={value} />}
      {kind === 'day' && <input {...common} type="date" value={value} />}
      {hint !== undefined && (
        <span id={`${id}-hint`} class="desk-hint">
          {hint}
        </span>
      )}
    </p>
  );
}
