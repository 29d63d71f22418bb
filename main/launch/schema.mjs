// `npm run schema`: writes the documents' JSON Schema files from the parser's own schemas.
import { spawnSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { builtProgram } from './build.mjs'
import { ensureInstalled, root } from './install.mjs'

if (!ensureInstalled()) process.exit(1)
const { documentJsonSchemas } = await import(pathToFileURL(join(await builtProgram(), 'program.mjs')).href)
for (const { name, schema } of documentJsonSchemas()) {
  const path = join('shared-model', 'design', `${name}.schema.json`)
  writeFileSync(join(root, path), `${JSON.stringify(schema, null, 2)}\n`)
  const biome = join(root, 'node_modules/@biomejs/biome/bin/biome')
  spawnSync(process.execPath, [biome, 'format', '--write', path], { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] })
  console.log(path)
}
