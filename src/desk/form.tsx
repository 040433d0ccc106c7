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
  const asked = ask.fields.filter(({ kind }) => kind !== 'picked');
  const more = asked.filter(({ isMore }) => isMore);
  const hasFile = asked.some(({ kind }) => kind === 'file');
  return (
    <form
      method="post"
      action={link('desk/do')}
      class="desk-form"
      {...(hasFile && { enctype: 'multipart/form-data' })}
      {...(ask.chooses !== undefined && { 'data-chooses': ask.chooses })}
    >
      <SecretField secret={secret} back={back} ask={ask.id} />
      {ask.was !== undefined && <input type="hidden" name="was" value={ask.was} />}
      {ask.says !== undefined && <p>{ask.says}</p>}
      <div class="desk-fields">
        {asked
          .filter(({ isMore }) => !isMore)
          .map((field) => (
            <AskField field={field} ask={ask.id} />
          ))}
        {more.length > 0 && (
          <details>
            <summary>More that its record may say</summary>
            <div class="desk-fields">
              {more.map((field) => (
                <AskField field={field} ask={ask.id} />
              ))}
            </div>
          </details>
        )}
        <p>
          <button>{ask.button}</button>
        </p>
      </div>
    </form>
  );
}

/** As many choices are seen at once; more are in a list that opens. */
const mostSeen = 8;

function AskField({ field, ask }: { field: Field; ask: string }): VNode {
  const { name, label, hint, kind, choices = [], value, isOptional = false, takesNothing = false } = field;
  if (kind === 'several' || (kind === 'one-of' && name === 'option' && choices.length <= mostSeen))
    return <Buttons field={field} />;
  const id = `${ask}-${name}`.replaceAll(/[^a-z0-9]+/giu, '-');
  const isFree = isOptional || takesNothing;
  const common = { id, name, required: !isFree, ...(hint !== undefined && { 'aria-describedby': `${id}-hint` }) };
  return (
    <p>
      <label for={id}>
        {label}
        {isOptional && <span class="desk-hint"> (optional)</span>}
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
      {(kind === 'lines' || kind === 'text') && (
        <textarea {...common} rows={field.rows ?? 2}>
          {value === undefined ? '' : `\n${value}`}
        </textarea>
      )}
      {kind === 'line' && <input {...common} value={value} />}
      {kind === 'day' && <input {...common} type="date" value={value} max={field.latest} />}
      {kind === 'file' && <input {...common} type="file" accept={field.accept} />}
      {hint !== undefined && (
        <span id={`${id}-hint`} class="desk-hint">
          {hint}
        </span>
      )}
    </p>
  );
}

/** All that is offered, to be pressed: one of them, or several. */
function Buttons({
  field: { name, label, hint, kind, choices = [], value = '', isOptional = false },
}: {
  field: Field;
}): VNode {
  const isOne = kind === 'one-of';
  const checked = isOne ? [value] : value.split(',');
  return (
    <fieldset class="desk-choices">
      <legend>
        {label}
        {isOptional && <span class="desk-hint"> (optional)</span>}
        {hint !== undefined && <span class="desk-hint"> {hint}</span>}
      </legend>
      {choices.map((one) => (
        <label class="desk-choice">
          <input
            type={isOne ? 'radio' : 'checkbox'}
            name={name}
            value={one.value}
            checked={checked.includes(one.value)}
            required={isOne}
          />{' '}
          {one.label}
        </label>
      ))}
    </fieldset>
  );
}
