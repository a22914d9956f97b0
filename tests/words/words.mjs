// Reports lines beyond 140 columns and words that are not to be used, in names, comments, messages and documents.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";

const root = execFileSync("git", ["rev-parse", "--show-toplevel"], { encoding: "utf8" }).trim();
const lines = (path) => readFileSync(path, "utf8").split("\n");
const listed = (path) => lines(new URL(path, import.meta.url)).filter((line) => line !== "" && !line.startsWith("#"));
const columns = 140;
const text = /(\.(cs|csproj|props|resx|md|js|mjs|ts|css|html|proto|yaml|json|http|sln)|\/run|Dockerfile)$/;
const made = /^(openapi\/|CushionService\.sln|src\/CushionService\/docs\/(answer|basket)\.md|src\/CushionService\/docs\/developers\/tables\.md)|package-lock\.json|^tests\/(words\/|contract\/baseline\/)/;
const wide = /\.(md|html|json|css)$/;

// "word -> plain word": the word by itself, or as a part of a name in camel case.
const rules = listed("not-to-use.txt").map((line) => {
  const [word, plain] = line.split(" -> ");
  const name = word.replaceAll(/(^| )(\w)/g, (_, space, letter) => letter.toUpperCase());
  return { word, plain, pattern: new RegExp(`\\b${word}\\b|(?:^|[^A-Za-z])[Aa-z]*(?<![A-Z])${name}(?![a-z])`) };
});

const files = execFileSync("git", ["ls-files"], { cwd: root, encoding: "utf8" }).split("\n");
const reports = [];
for (const file of files.filter((path) => text.test(path) && !made.test(path))) {
  lines(`${root}/${file}`).forEach((line, index) => {
    const report = (fault) => reports.push(`${file}:${index + 1}: ${fault}`);
    // A table's row cannot be wrapped, and neither can a link.
    if ([...line].length > columns && !(wide.test(file) && /^\s*\||\]\(|^\s*[{<"]|^.*\{.*\}/.test(line))) {
      report(`${[...line].length} columns, where ${columns} are allowed`);
    }
    for (const { word, plain, pattern } of rules) {
      if (pattern.test(line)) {
        report(`"${word}": write ${plain}`);
      }
    }
  });
}

reports.forEach((report) => console.log(report));
console.log(`words: ${reports.length} places in ${files.length} files`);
process.exit(reports.length > 0 ? 1 : 0);
