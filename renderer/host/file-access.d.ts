/** The part of the File System Access interface that the page uses; not in every browser, nor in the DOM types. */
interface PickerType {
  readonly description: string
  readonly accept: Readonly<Record<string, readonly string[]>>
}

interface Window {
  readonly showOpenFilePicker?: (options: {
    readonly types: readonly PickerType[]
    readonly multiple?: boolean
  }) => Promise<readonly FileSystemFileHandle[]>
  readonly showSaveFilePicker?: (options: {
    readonly suggestedName: string
    readonly types: readonly PickerType[]
  }) => Promise<FileSystemFileHandle>
}

interface FileSystemHandle {
  readonly queryPermission?: (ask: { readonly mode: 'read' | 'readwrite' }) => Promise<PermissionState>
  readonly requestPermission?: (ask: { readonly mode: 'read' | 'readwrite' }) => Promise<PermissionState>
}
