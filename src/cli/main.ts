import { type Answer, refusal } from './answer.ts';
import { check } from './check.ts';
import { compare } from './compare.ts';
import { figure } from './figure.ts';
import { fold } from './fold.ts';
import { harmless } from './harmless.ts';
import { helpOn, overview } from './help.ts';
import { lots } from './lots.ts';
import { newJob } from './new.ts';
import { takeoff } from './takeoff.ts';

const commands = [figure, check, takeoff, compare, lots, newJob];

async function answerTo(words: readonly string[]): Promise<Answer> {
  const [first, ...rest] = words;
  if (first === undefined || first === '--help' || first === '-h')
    return { text: overview(commands), exit: 0 };
  const command = commands.find((one) => one.name === first);
  if (!command) {
    const known = commands.map((one) => one.name).join(', ');
    const what = first.startsWith('-') ? 'flag' : 'command';
    return refusal(
      `There is no ${what} “${first}”. The commands are ${known}; stretchout --help tells what they do.`,
    );
  }
  if (rest.includes('--help') || rest.includes('-h')) return { text: helpOn(command), exit: 0 };
  return command.run(rest);
}

/** Each line of a refusal on its own. */
function refused(text: string): string {
  return text
    .split('\n')
    .map((line) => fold(line))
    .join('\n');
}

// Whoever reads may stop reading, as `head` does; that is no fault.
process.stdout.on('error', (error) => {
  if (!('code' in error && error.code === 'EPIPE')) throw error;
});

const { text, exit } = await answerTo(process.argv.slice(2));
if (exit === 2) process.stderr.write(`${harmless(refused(text))}\n`);
else process.stdout.write(`${harmless(text)}\n`);
process.exitCode = exit;
