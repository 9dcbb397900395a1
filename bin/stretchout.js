#!/usr/bin/env node
// Plain JavaScript, because Node reads this file before anything here can read TypeScript.
import { register } from 'tsx/esm/api';

register();
await import('../src/cli/main.ts');
