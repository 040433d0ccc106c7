/** A command line that asks for what cannot be done; printed without a stack trace, exit code 2. */
export class UsageError extends Error {}
