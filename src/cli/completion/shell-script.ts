/** Shells that a script is made for. */
export const shells = ['bash', 'zsh', 'fish'] as const;
export type Shell = (typeof shells)[number];

/** A script that a shell reads once: at each Tab it asks the program, by the name that was typed, what may stand there, with all words up to the
 *  cursor. Where the program knows nothing, the shell offers files. */
export function shellScript(shell: Shell): string {
  return scripts[shell];
}

// Bash 3.2 reads it too: macOS has no later one.
const bash = `# bookmatch completion bash: source it in ~/.bashrc, as in
#   source <(bookmatch completion bash)
_bookmatch() {
  local line
  COMPREPLY=()
  while IFS= read -r line; do
    COMPREPLY+=("$line")
  done < <("$1" completion bash -- "\${COMP_WORDS[@]:1:COMP_CWORD}" 2>/dev/null)
}
complete -o default -F _bookmatch bookmatch
`;

const zsh = `#compdef bookmatch
# bookmatch completion zsh: source it in ~/.zshrc after compinit, as in
#   source <(bookmatch completion zsh)
_bookmatch() {
  local line
  local -a found
  while IFS= read -r line; do
    found+=("\${\${line%%$'\\t'*}//:/\\\\:}:\${line#*$'\\t'}")
  done < <("\${words[1]}" completion zsh -- "\${(@)words[2,CURRENT]}" 2>/dev/null)
  if (( \${#found} )); then
    _describe bookmatch found
  else
    _files
  fi
}
compdef _bookmatch bookmatch
`;

const fish = `# bookmatch completion fish: keep it as ~/.config/fish/completions/bookmatch.fish
function __bookmatch_found
    set -l last (commandline -ct)
    set -l typed (commandline -opc) "$last"
    set -l found (command $typed[1] completion fish -- $typed[2..-1] 2>/dev/null)
    if test (count $found) -gt 0
        printf '%s\\n' $found
    else
        __fish_complete_path "$last"
    end
end
complete -c bookmatch -f -a '(__bookmatch_found)'
`;

const scripts: Readonly<Record<Shell, string>> = { bash, zsh, fish };
