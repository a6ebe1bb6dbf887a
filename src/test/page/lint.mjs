/**
 * Lints the page's modules and their tests with ESLint.
 * Usage: `node lint.mjs LINTER RECOMMENDED`: two modules, ESLint in one file and the rules it recommends.
 */
import { readFileSync, readdirSync } from "node:fs";
import { pathToFileURL } from "node:url";
import rules from "./eslint.config.mjs";

const [{ Linter }, recommended] = await Promise.all(
  process.argv.slice(2).map((path) => import(pathToFileURL(path))));

const config = [recommended.default, ...rules, { linterOptions: { reportUnusedDisableDirectives: "error" } }];
const files = ["src/main/page", "src/main/page/desk", "src/test/page"].flatMap((folder) =>
  readdirSync(folder).filter((name) => /\.m?js$/.test(name)).map((name) => folder + "/" + name));

const linter = new Linter({ configType: "flat" });
const found = files.flatMap((file) =>
  linter.verify(readFileSync(file, "utf8"), [{ files: ["**/*.js", "**/*.mjs"] }, ...config], file)
    .map(({ line, column, ruleId, message }) => `${file}:${line}:${column} ${message} (${ruleId})`));

found.forEach((words) => console.log(words));
console.log(files.length + " files, " + found.length + " findings");
process.exitCode = found.length > 0 ? 1 : 0;
