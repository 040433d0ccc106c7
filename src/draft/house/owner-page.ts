/** The page that lies beside the records of a new house, for who opens the folder without knowing the program. */
export function ownerPage(name: string): string {
  return `# ${plain(name)}

The selections and specification book of this house. Everything that is decided is written in \`content/\`, one file for each
thing; the book is made from it, and nothing is written twice.

| in \`content/\` | is |
|---|---|
| \`house.md\` | the house: people, contract, allowances, order of work |
| \`rooms/\` | one file for each room: its size, doors, windows, and what is chosen in it |
| \`options/\` | one file for each finish that can be chosen, with its price |
| \`categories/\` | the kinds of finishes, and how each is measured |
| \`trades/\` | who does what |

Commands, in this folder:

\`\`\`sh
bookmatch check                      # what is wrong or missing: where, and what to do
bookmatch new option floor           # a finish that can be chosen
bookmatch new room "Loft 12' x 10'"  # one more room
bookmatch build                      # the book: open _site/book/index.html
bookmatch desk                       # the book in the browser, to choose and to write in
git add --all                        # all that is new or changed …
git commit -m "What we decided"      # … is kept, to compare with later
\`\`\`

To choose, open the desk, or \`bookmatch choose Kitchen Floor 'Oak strip' --by owner\`. Either writes it under the selection in the room's file, as you may by hand:

\`\`\`yaml
  - at: floor
    category: floor
    allowance: floors
    chosen: oak-strip
\`\`\`

\`chosen: none\` says that there shall be none.
`;
}

/** A name as a heading of Markdown: no sign of it is more than a sign. */
function plain(name: string): string {
  return name.replace(/[\\`*_[\]<>#|~&]/gu, '\\$&');
}
