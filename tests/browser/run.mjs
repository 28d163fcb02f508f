// Runs one Python program in the browser's Python: node run.mjs PROGRAM GIVEN ANSWERS
// The program sees the folder GIVEN as /given and the folder ANSWERS as /answers, and no network.
import process from "node:process";
import { loadPyodide } from "pyodide";

const [program, given, answers] = process.argv.slice(2);

globalThis.fetch = () => {
  throw new Error("the browser's Python runs without a network here");
};

const python = await loadPyodide();
python.mountNodeFS("/given", given);
python.mountNodeFS("/answers", answers);
python.runPython(`
import runpy
runpy.run_path("/given/" + ${JSON.stringify(program)}, run_name="__main__")
`);
