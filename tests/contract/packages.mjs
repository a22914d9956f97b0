// That the packages could be published as they are: what is in them, what they say of themselves, and no more than that.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";

const [contract, packed, ...archives] = process.argv.slice(2);
const version = JSON.parse(readFileSync(contract, "utf8")).info.version;
const run = (program, ...options) => execFileSync(program, options, { encoding: "utf8", maxBuffer: 1 << 26 });
const lines = (text) => text.split("\n").filter((line) => line !== "");
const kilobytes = (file) => readFileSync(file).length / 1024;

// npm: every path that the package names is in it, and nothing else is but what is listed.
const every = (value) => (typeof value === "string" ? [value] : Object.values(value ?? {}).flatMap(every));
const listed = {
  "cushionservice-client": /^(package\.json|README\.md|LICENSE|dist\/(index|contract)\.(js|d\.ts))$/,
  "cushion-estimate":
    /^(package\.json|README\.md|LICENSE|index\.d\.ts|custom-elements\.json|dist\/[\w.-]+\.js|dist\/words\/..\.json|examples\/[\w.-]+)$/,
};
for (const archive of archives) {
  const files = lines(run("tar", "-tzf", archive)).map((name) => name.replace(/^package\//, ""));
  const manifest = JSON.parse(run("tar", "-xzOf", archive, "package/package.json"));
  const { name } = manifest;
  for (const file of files) assert.match(file, listed[name], `${name} has ${file}`);
  for (const file of ["README.md", "LICENSE"]) assert.ok(files.includes(file), `${name} has no ${file}`);
  assert.equal(manifest.version, version, name);
  assert.equal(manifest.license, "SEE LICENSE IN LICENSE", name);
  assert.ok(manifest.description.length > 20, `${name} says nothing of itself`);
  assert.ok(!manifest.private, `${name} is private: npm would not publish it`);
  assert.deepEqual(Object.keys(manifest.dependencies ?? {}), [], name);
  for (const path of [...every(manifest.exports), ...every(manifest.main), ...every(manifest.types), ...every(manifest.customElements)])
    assert.ok(path.includes("*") || files.includes(path.replace(/^\.\//, "")), `${name} names ${path}, which it does not have`);
  assert.ok(kilobytes(archive) < 1024, `${name} is too large`);
}

// NuGet: the assembly with its documentation, its symbols beside it, and what the gallery shows.
const nupkg = `${packed}/CushionService.Client.${version}.nupkg`;
const parts = (file) => lines(run("unzip", "-Z1", file)).filter((name) => !/^(_rels\/|package\/|\[Content_Types\])/.test(name));
const lib = "lib/net10.0/CushionService.Client";
assert.deepEqual(parts(nupkg).sort(), ["CushionService.Client.nuspec", "LICENSE.txt", "README.md", `${lib}.dll`, `${lib}.xml`].sort());
assert.ok(parts(nupkg.replace(/nupkg$/, "snupkg")).includes(`${lib}.pdb`), "no symbols");
const specification = run("unzip", "-p", nupkg, "CushionService.Client.nuspec");
for (const needed of [
  `<version>${version}</version>`,
  '<license type="file">LICENSE.txt</license>',
  "<readme>README.md</readme>",
  "<description>Calls CushionService",
  "<authors>CushionService</authors>",
  "<tags>",
])
  assert.ok(specification.includes(needed), `the package for .NET does not say ${needed}`);
const dependencies = [...specification.matchAll(/<dependency id="([^"]+)"/g)].map(([, id]) => id);
assert.deepEqual(dependencies, ["Microsoft.Extensions.Http"]);
const documented = run("unzip", "-p", nupkg, `${lib}.xml`);
for (const member of ["M:CushionService.Client.CushionClient.QuoteManyAsync", "T:CushionService.Client.Order"])
  assert.ok(documented.includes(member), `${member} is not documented`);
console.log(`packages: ${archives.length} of npm and one of NuGet could be published, version ${version}`);
