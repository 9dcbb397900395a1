import fc from 'fast-check';

// Laws are tried on the same cases every time, so that a red run says something about the change. A failing case is
// printed with its seed and becomes a named test. `SEED=1` tries others.
fc.configureGlobal({ seed: Number(process.env.SEED ?? 20261125) });
