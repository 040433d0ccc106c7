import type { Readable, Writable } from 'node:stream';
import { StreamMessageReader, StreamMessageWriter, type Message } from 'vscode-jsonrpc/node';
import { frontMatterAlone, schemaOf } from './front-matter.js';

/** The two streams of a program that speaks the Language Server Protocol: what it says, and what it is told. */
export interface Speaker {
  readonly says: Readable;
  readonly hears: Writable;
}

/** Stands between an editor and a server of YAML, so that the server sees of each record its front matter alone, with its schema. It may do what
 *  leaves the text as it is: tell problems, complete keys, say what they mean. Source of messages: Language Server Protocol 3.17. */
export function relay(editor: Speaker, server: Speaker): void {
  const [toEditor, toServer] = [new StreamMessageWriter(editor.hears), new StreamMessageWriter(server.hears)];
  let greeting: unknown;
  new StreamMessageReader(editor.says).listen((message: Called) => {
    if (message.method === 'initialize') greeting = message.id;
    void toServer.write(forServer(message));
  });
  new StreamMessageReader(server.says).listen((message: Called) => {
    const isAsked = message.method !== undefined && message.id !== undefined;
    if (isAsked) void toServer.write(answerTo(message));
    else void toEditor.write(isGreeting(message) ? withFewAbilities(message) : message);
  });

  function isGreeting({ id, method }: Called): boolean {
    return id !== undefined && method === undefined && id === greeting;
  }
}

/** A message as far as it is looked at. */
interface Called extends Message {
  readonly id?: unknown;
  readonly method?: string;
  readonly params?: object;
  readonly result?: object;
}

/** What the editor says, with front matter in place of records. */
function forServer(message: Called): Message {
  switch (message.method) {
    case 'initialize':
      return { ...message, params: askedForSettings(message.params) } as Message;
    case 'textDocument/didOpen': {
      const { textDocument } = message.params as {
        readonly textDocument: { readonly uri: string; readonly text: string };
      };
      const text = frontMatterAlone(textDocument.text, schemaOf(textDocument.uri));
      return { ...message, params: { textDocument: { ...textDocument, languageId: 'yaml', text } } } as Message;
    }
    case 'textDocument/didChange': {
      const { textDocument, contentChanges } = message.params as {
        readonly textDocument: { readonly uri: string };
        readonly contentChanges: readonly { readonly text: string }[];
      };
      // Whole texts, as the editor was told at the start.
      const changes = contentChanges.map(({ text }) => ({ text: frontMatterAlone(text, schemaOf(textDocument.uri)) }));
      return { ...message, params: { textDocument, contentChanges: changes } } as Message;
    }
    default:
      return message;
  }
}

/** Lets the server ask for its settings, whether or not the editor would answer. */
function askedForSettings(params: object = {}): object {
  const { capabilities = {} } = params as { readonly capabilities?: { readonly workspace?: object } };
  return {
    ...params,
    capabilities: { ...capabilities, workspace: { ...capabilities.workspace, configuration: true } },
  };
}

/** What the server asks of an editor is answered here, so that it needs no settings there and registers nothing more. */
function answerTo({ jsonrpc, id, method, params }: Called): Message {
  if (method !== 'workspace/configuration') return { jsonrpc, id, result: null } as Message;
  const { items } = params as { readonly items: readonly { readonly section?: string }[] };
  return { jsonrpc, id, result: items.map(({ section }) => (section === 'yaml' ? settings : null)) } as Message;
}

/** No catalog of schemas is fetched: nothing is looked up in a network. */
const settings = { validate: true, hover: true, completion: true, schemaStore: { enable: false } };

/** Of a server's abilities those that change no text by themselves. Formatting would drop the prose, which the server does not see. */
function withFewAbilities(message: Called): Message {
  const { capabilities = {}, ...rest } = (message.result ?? {}) as { readonly capabilities?: Record<string, unknown> };
  const { completionProvider, hoverProvider } = capabilities;
  // Whole texts at each change: what is left of a change alone cannot be told.
  const textDocumentSync = { openClose: true, change: 1 };
  return {
    ...message,
    result: { ...rest, capabilities: { textDocumentSync, completionProvider, hoverProvider } },
  } as Message;
}
