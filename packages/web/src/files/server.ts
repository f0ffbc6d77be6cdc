import type {
  EnclosureFile,
  EnclosureList,
  EnclosureWrite,
  LibraryEntry,
  LibraryListing,
  LocatedFinding,
  RefusalWithFindings,
  RoomFile,
} from '@shoreglass/contract';

/** The server did not answer at all. */
export class ServerGone extends Error {
  override readonly name = 'ServerGone';
}

/** The server answered no, and why. */
export class Refused extends Error {
  override readonly name = 'Refused';
  readonly status: number;
  readonly findings: readonly LocatedFinding[];

  constructor(status: number, message: string, findings: readonly LocatedFinding[] = []) {
    super(message);
    this.status = status;
    this.findings = findings;
  }
}

export function fetchEnclosures(signal?: AbortSignal): Promise<EnclosureList> {
  return ask<EnclosureList>('api/enclosures', signal ? { signal } : {});
}

export function fetchEnclosure(id: string, signal?: AbortSignal): Promise<EnclosureFile> {
  return ask<EnclosureFile>(`api/enclosures/${encodeURIComponent(id)}`, signal ? { signal } : {});
}

export function fetchLibrary(signal?: AbortSignal): Promise<LibraryListing> {
  return ask<LibraryListing>('api/library', signal ? { signal } : {});
}

export function fetchLibraryEntry(kind: string, id: string, signal?: AbortSignal): Promise<LibraryEntry> {
  return ask<LibraryEntry>(
    `api/library/${encodeURIComponent(kind)}/${encodeURIComponent(id)}`,
    signal ? { signal } : {},
  );
}

export function fetchRoom(name: string): Promise<RoomFile> {
  return ask<RoomFile>(`api/rooms/${encodeURIComponent(name)}`, {});
}

export function saveEnclosure(id: string, write: EnclosureWrite): Promise<EnclosureFile> {
  return ask<EnclosureFile>(`api/enclosures/${encodeURIComponent(id)}`, {
    method: 'PUT',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(write),
  });
}

/** @throws ServerGone when nothing answers, Refused when the answer is no */
async function ask<T>(path: string, init: RequestInit): Promise<T> {
  const response = await answered(path, init);
  const body: unknown = await response.json().catch(() => undefined);
  if (response.ok && body !== undefined) return body as T;
  const { message, findings } = (body ?? {}) as Partial<RefusalWithFindings>;
  throw new Refused(response.status, message ?? `The server answered ${response.status}.`, findings);
}

async function answered(path: string, init: RequestInit): Promise<Response> {
  try {
    return await fetch(path, init);
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') throw error;
    throw new ServerGone('The Shoreglass server does not answer. It may have been stopped.');
  }
}
