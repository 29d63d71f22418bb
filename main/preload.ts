import { contextBridge, ipcRenderer } from 'electron'
import { pageSide } from './bridge/page-side'

// The page gets two functions and no more: send a message of the contract, listen to the shell's events.
contextBridge.exposeInMainWorld('sillwright', pageSide(ipcRenderer))
