// The manifests as kustomize would apply them: each object against the schema of its kind, and the names that they have of each other.
import assert from "node:assert/strict";
import { existsSync, readFileSync, readdirSync } from "node:fs";
import { dirname, join, normalize, relative } from "node:path";
import { parse, parseAllDocuments } from "yaml";

const deploy = join(import.meta.dirname, "../../src/CushionService/deploy");
const read = (path) => readFileSync(path, "utf8");
const listed = new Set();

// Kustomize's parts that the manifests use: resources, components, JSON patches that add, images, namespace.
function build(folder) {
  const path = join(folder, "kustomization.yaml");
  listed.add(path);
  const { resources = [], components = [], patches = [], images = [], namespace, ...rest } = parse(read(path));
  assert.deepEqual(Object.keys(rest).sort(), ["apiVersion", "kind"], path);
  const objects = resources.flatMap((name) => {
    const at = join(folder, name);
    if (!name.endsWith(".yaml")) return build(at);
    listed.add(at);
    return parseAllDocuments(read(at)).map((document) => document.toJS());
  });
  return finish([...objects], components.map((name) => join(folder, name)), patches, images, namespace);
}

function finish(objects, components, patches, images, namespace) {
  for (const component of components) {
    const path = join(component, "kustomization.yaml");
    const own = parse(read(path));
    assert.equal(own.kind, "Component", path);
    listed.add(path);
    for (const name of own.resources ?? []) {
      listed.add(join(component, name));
      objects.push(...parseAllDocuments(read(join(component, name))).map((document) => document.toJS()));
    }
    finish(objects, [], own.patches ?? [], [], undefined);
  }
  for (const { target, patch } of patches) {
    const name = new RegExp(`^${target.name}$`);
    const found = objects.filter((object) => object.kind === target.kind && name.test(object.metadata.name));
    assert.ok(found.length > 0, `nothing is called ${target.name}`);
    for (const object of found) for (const step of parse(patch)) add(object, step);
  }
  for (const object of objects) {
    if (namespace !== undefined) object.metadata.namespace = namespace;
    for (const container of object.spec?.template?.spec?.containers ?? []) {
      const image = images.find(({ name }) => name === container.image);
      if (image !== undefined) container.image = image.digest ? `${image.newName}@${image.digest}` : `${image.newName}:${image.newTag}`;
    }
  }
  return objects;
}

function add(object, { op, path, value }) {
  assert.equal(op, "add");
  const keys = path.slice(1).split("/");
  const end = keys.pop();
  const place = keys.reduce((at, key) => at[key], object);
  assert.ok(place !== undefined, path);
  if (end === "-") place.push(value);
  else place[end] = value;
}

const packages = {
  "keda.sh": "@kubernetes-models/keda/",
  "gateway.networking.k8s.io": "@kubernetes-models/gateway-api/",
  "monitoring.coreos.com": "@kubernetes-models/prometheus-operator/",
};
async function validate(object) {
  const group = object.apiVersion.split("/")[0];
  const module = packages[group] === undefined ? `kubernetes-models/${object.apiVersion}` : packages[group] + object.apiVersion;
  const { [object.kind]: Kind } = await import(module);
  assert.ok(Kind, `no model of ${object.apiVersion} ${object.kind}`);
  new Kind(object).validate();
}

function agree(objects) {
  const pods = objects.filter((object) => object.kind === "Deployment");
  const ports = (labels) =>
    pods
      .filter(({ spec }) => Object.entries(labels).every(([key, value]) => spec.template.metadata.labels[key] === value))
      .flatMap(({ spec }) => spec.template.spec.containers.flatMap((container) => container.ports.map(({ name }) => name)));
  for (const { kind, metadata, spec } of objects) {
    const name = `${kind} ${metadata.name}`;
    if (kind === "Service") spec.ports.forEach((port) => assert.ok(ports(spec.selector).includes(port.targetPort), name));
    if (kind === "PodMonitor")
      spec.podMetricsEndpoints.forEach(({ port }) => assert.ok(ports(spec.selector.matchLabels).includes(port), name));
    if (kind === "NetworkPolicy") {
      const incoming = (spec.ingress ?? []).flatMap((rule) => rule.ports).filter(({ port }) => typeof port === "string");
      incoming.forEach(({ port }) => assert.ok(ports(spec.podSelector.matchLabels).includes(port), name));
    }
    if (kind.endsWith("Route"))
      for (const { name: service, port } of spec.rules.flatMap((rule) => rule.backendRefs))
        assert.ok(
          objects.some((one) => one.kind === "Service" && one.metadata.name === service && one.spec.ports.some((p) => p.port === port)),
          name,
        );
    if (spec?.scaleTargetRef !== undefined) assert.ok(pods.some((pod) => pod.metadata.name === spec.scaleTargetRef.name), name);
    if (kind === "PodDisruptionBudget") assert.equal(spec.maxUnavailable, 1);
    for (const container of spec?.template?.spec?.containers ?? []) {
      assert.match(container.image, /[:@]/, name);
      assert.equal(container.securityContext.readOnlyRootFilesystem, true, name);
      const volumes = spec.template.spec.volumes.map((volume) => volume.name);
      container.volumeMounts.forEach((mount) => assert.ok(volumes.includes(mount.name), name));
    }
  }
}

let count = 0;
const overlays = join(deploy, "kubernetes/overlays");
for (const overlay of readdirSync(overlays)) {
  const objects = build(join(overlays, overlay));
  for (const object of objects) await validate(object);
  agree(objects);
  count += objects.length;
}
// The components that no overlay takes.
for (const object of finish([], [join(deploy, "kubernetes/components/autoscaling")], [], [])) await validate(object);

const files = readdirSync(join(deploy, "kubernetes"), { recursive: true }).map((name) => join(deploy, "kubernetes", name));
const apart = [join(deploy, "kubernetes/components/autoscaling/prometheus-adapter.yaml")];
for (const file of files.filter((name) => name.endsWith(".yaml") && !apart.includes(name)))
  assert.ok(listed.has(normalize(file)), `${relative(deploy, file)} is in no kustomization`);

// What the compose file mounts is there.
const compose = join(deploy, "compose/compose.yaml");
for (const [name, service] of Object.entries(parse(read(compose)).services)) {
  assert.ok(service.image || service.build, name);
  for (const volume of service.volumes ?? [])
    if (volume.startsWith("./")) assert.ok(existsSync(join(dirname(compose), volume.split(":")[0])), volume);
}

// Every measure of the dashboard and of the alarms is one that the service has.
const guide = read(join(deploy, "../docs/operating.md"));
const known = [...guide.matchAll(/^\| `(cushionservice\.[a-z_.]+)` \|/gm)].map(([, name]) => name.replaceAll(".", "_"));
const shown = read(join(deploy, "grafana/cushionservice.json")) + read(join(deploy, "kubernetes/components/monitoring/alarms.yaml"));
for (const [name] of shown.matchAll(/cushionservice_[a-z_]+/g))
  assert.ok(known.some((instrument) => name.startsWith(instrument)), `${name} is no measure of the service`);
assert.equal(new Set(JSON.parse(read(join(deploy, "grafana/cushionservice.json"))).panels.map(({ id }) => id)).size, 10);
console.log(`manifests: ${count} objects of ${readdirSync(overlays).length} overlays`);
