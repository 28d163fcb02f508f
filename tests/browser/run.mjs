// Runs one Python program in the browser's Python: node run.mjs PROGRAM GIVEN ANSWERS
// The program sees the folder GIVEN as /given and the folder ANSWERS as /answers, and no network.
import process from "node:process";
import { loadPyodide } from "pyodide";

const [program, given, answers] = process.argv.slice(2);

globalThis.fetch = () => {
  throw new Error("the browser's Python runs without a network here");
};

try {
  const python = await loadPyodide();
  python.mountNodeFS("/given", given);
  python.mountNodeFS("/answers", answers);
  const path = JSON.stringify(`/given/${program}`);
  python.runPython(`import runpy\nrunpy.run_path(${path}, run_name="__main__")`);
} catch (error) {
  // Left alone, node would print the runtime's whole code in front of what went wrong.
  console.error(error.message);
  process.exitCode = 1;
}
