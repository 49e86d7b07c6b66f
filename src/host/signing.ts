/**
 * Detached signatures by the tools that git signs with: `ssh-keygen -Y` and `gpg`. No cryptography of our own. Which
 * key and which program is taken from git's settings of the user and of the system, never from those of a repository:
 * a folder that somebody sends must not choose what is run.
 */
import { access, constants, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { homedir, tmpdir } from 'node:os';
import { isAbsolute, join, resolve } from 'node:path';
import { signatureNames } from './issue-folder.js';
import { findProgram, run } from './programs.js';

/** What a signature is good for; another purpose does not verify. */
const namespace = 'garboard';

export type SignatureFormat = keyof typeof signatureNames;

/** Who is to sign. Without `key` it is what git is set to sign with. */
export interface SigningKey {
    /** File of an SSH key: the private one, or the public one whose private one the agent holds. */
    readonly key?: string;
}

export interface SignatureReport {
    readonly state:
        /** Good, by somebody who is known. */
        | 'good'
        /** Good, but whoever made it is not among those known. */
        | 'good-unknown'
        /** Does not belong to this manifest, or cannot be read. */
        | 'bad'
        /** The tool that could tell is not installed, or would not run. */
        | 'not-checked';
    readonly format: SignatureFormat;
    /** Who signed, as the list of allowed signers or the key says. */
    readonly signer?: string;
    /** Fingerprint of the key. */
    readonly key?: string;
    /** What the tool says, or what is to be done, in a sentence. */
    readonly detail: string;
}

const missing = (program: string) => `${program} is not installed, or not in the PATH`;
const firstLine = (text: string) => text.split(/\r?\n/).map(line => line.trim()).find(line => line !== '') ?? '';

/** A setting of git's, the user's before the system's; undefined where it is not set or git is not there. */
async function gitSetting(name: string, isPath = false): Promise<string | undefined> {
    const git = await findProgram('git');
    for (const scope of git ? ['--global', '--system'] : []) {
        const { status, stdout } = await run(git ?? '', ['config', scope, '--includes', ...isPath ? ['--type=path'] : [], '--get', name]);
        if (status === 0 && stdout.trim() !== '') {
            return stdout.replace(/\r?\n$/, '');
        }
    }
    return undefined;
}

/**
 * Signs a manifest, beside which the signature is written. Gives the name of the signature's file.
 * @throws Error that says what is missing or what the tool said.
 */
export async function signManifest(manifestPath: string, { key }: SigningKey): Promise<string> {
    if (key !== undefined) {
        return signBySsh(manifestPath, resolve(key));
    }
    const format = await gitSetting('gpg.format') ?? 'openpgp';
    if (format !== 'ssh' && format !== 'openpgp') {
        throw new Error(`git is set to sign by ${format}, which Garboard does not use; name an SSH key with --key, or set gpg.format to ssh or openpgp`);
    }
    const own = await gitSetting('user.signingkey', format === 'ssh');
    if (own === undefined) {
        throw new Error(`git is not set to sign: give git config --global user.signingkey ${format === 'ssh' ? 'the path of an SSH key' : 'the id of a key'}, or name an SSH key with --key`);
    }
    return format === 'ssh' ? signBySsh(manifestPath, own) : signByGpg(manifestPath, own);
}

/** `key` is a path, or a public key itself, which the agent then signs for. */
async function signBySsh(manifestPath: string, key: string): Promise<string> {
    const program = await findProgram(await gitSetting('gpg.ssh.program') ?? 'ssh-keygen');
    if (!program) {
        throw new Error(`${missing('ssh-keygen')}; it comes with OpenSSH`);
    }
    const literal = key.startsWith('key::') ? key.slice('key::'.length) : /^(?:ssh-|ecdsa-|sk-)\S+ /.test(key) ? key : undefined;
    const folder = literal === undefined ? undefined : await mkdtemp(join(tmpdir(), 'garboard-key-'));
    try {
        const file = folder === undefined ? isAbsolute(key) ? key : resolve(homedir(), key) : join(folder, 'key.pub');
        if (literal !== undefined) {
            await writeFile(file, `${literal}\n`, { mode: 0o600 });
        }
        const { status, stderr } = await run(program, ['-Y', 'sign', '-n', namespace, '-f', file, ...literal === undefined ? [] : ['-U'], resolve(manifestPath)]);
        if (status !== 0) {
            const name = literal === undefined ? file : 'the key of the agent';
            throw new Error(/incorrect passphrase|enter passphrase/i.test(stderr) ? `ssh-keygen did not sign with ${name}: the key has a passphrase, and it was not given. Add the key to the agent with ssh-add, or run this in a terminal, where it can be asked for`
                : `ssh-keygen did not sign with ${name}: ${firstLine(stderr) || 'it gave no reason'}${/no such file/i.test(stderr) ? '. Look at the path of the key' : ''}`);
        }
        return signatureNames.ssh;
    } finally {
        if (folder !== undefined) {
            await rm(folder, { recursive: true, force: true });
        }
    }
}

const gpgProgram = async () => findProgram(await gitSetting('gpg.openpgp.program') ?? await gitSetting('gpg.program') ?? 'gpg');

async function signByGpg(manifestPath: string, key: string): Promise<string> {
    const program = await gpgProgram();
    if (!program) {
        throw new Error(`${missing('gpg')}; it comes with GnuPG`);
    }
    const { status, stderr } = await run(program, ['--status-fd=2', '--armor', '--detach-sign', `--local-user=${key}`, '--output', `${resolve(manifestPath).slice(0, -'.json'.length)}.json.asc`, resolve(manifestPath)]);
    if (status !== 0 || !/^\[GNUPG:\] SIG_CREATED /m.test(stderr)) {
        throw new Error(`gpg did not sign with ${key}: ${firstLine(stderr.replace(/^\[GNUPG:\].*$/gm, '')) || 'it gave no reason'}`);
    }
    return signatureNames.openpgp;
}

export interface VerifyOptions {
    /** File of allowed signers; git's `gpg.ssh.allowedSignersFile` where left out. */
    readonly allowedSigners?: string;
    /** ISO date at which the key must have been allowed: that of the issue. */
    readonly date?: string;
}

/** What a signature says of a manifest. Both are files that were found to be there. */
export function verifySignature(manifestPath: string, signaturePath: string, format: SignatureFormat, options: VerifyOptions = {}): Promise<SignatureReport> {
    return format === 'ssh' ? verifyBySsh(resolve(manifestPath), resolve(signaturePath), options) : verifyByGpg(resolve(manifestPath), resolve(signaturePath));
}

async function verifyBySsh(manifestPath: string, signaturePath: string, { allowedSigners, date }: VerifyOptions): Promise<SignatureReport> {
    const program = await findProgram(await gitSetting('gpg.ssh.program') ?? 'ssh-keygen');
    if (!program) {
        return { state: 'not-checked', format: 'ssh', detail: `${missing('ssh-keygen')}; it comes with OpenSSH` };
    }
    const manifest = await readFile(manifestPath);
    const bare = await run(program, ['-Y', 'check-novalidate', '-n', namespace, '-s', signaturePath], manifest);
    const key = /\bkey (\S+)/.exec(bare.stdout)?.[1];
    if (bare.status === undefined) {
        return { state: 'not-checked', format: 'ssh', detail: `ssh-keygen would not run: ${firstLine(bare.stderr)}` };
    }
    if (bare.status !== 0 || key === undefined) {
        return /unknown option|illegal option|usage:/i.test(bare.stderr) ? { state: 'not-checked', format: 'ssh', detail: 'this ssh-keygen cannot check signatures; OpenSSH 8.1 or newer can' }
            : { state: 'bad', format: 'ssh', detail: firstLine(bare.stderr || bare.stdout) || 'the signature does not belong to this manifest' };
    }
    const known = { format: 'ssh' as const, key };
    const allowed = allowedSigners === undefined ? await gitSetting('gpg.ssh.allowedSignersFile', true) : resolve(allowedSigners);
    if (allowed === undefined) {
        return { ...known, state: 'good-unknown', detail: 'no file of allowed signers is named; name one with --allowed-signers, or set git’s gpg.ssh.allowedSignersFile' };
    }
    if (!await isThere(allowed)) {
        return { ...known, state: 'good-unknown', detail: `the file of allowed signers, ${allowed}, cannot be read; name the right one with --allowed-signers, or change git’s gpg.ssh.allowedSignersFile` };
    }
    const revoked = await gitSetting('gpg.ssh.revocationFile', true);
    if (revoked !== undefined && !await isThere(revoked)) {
        return { ...known, state: 'not-checked', detail: `the file of revoked keys that git’s gpg.ssh.revocationFile names, ${revoked}, cannot be read; put it there, or change the setting` };
    }
    // The end of the day of issue: a key that has run out since was good then.
    const at = date === undefined ? [] : [`-Overify-time=${date.replaceAll('-', '')}235959`];
    const found = await run(program, ['-Y', 'find-principals', ...at, '-s', signaturePath, '-f', allowed]);
    const isBy = (principal: string, more: readonly string[]) => run(program, ['-Y', 'verify', '-n', namespace, ...at, '-s', signaturePath, '-f', allowed, ...more, '-I', principal], manifest);
    let reason = firstLine(found.stderr);
    for (const principal of found.status === 0 ? found.stdout.split(/\r?\n/).filter(line => line !== '') : []) {
        const verified = await isBy(principal, []);
        if (verified.status !== 0) {
            reason ||= firstLine(verified.stderr);
        } else if (revoked !== undefined && (await isBy(principal, ['-r', revoked])).status !== 0) {
            return { ...known, state: 'bad', signer: principal, detail: `the key ${key} of ${principal} is revoked by ${revoked}; ask ${principal} whether it was in good hands when the report was issued` };
        } else {
            return { ...known, state: 'good', signer: principal, detail: firstLine(verified.stdout) };
        }
    }
    return { ...known, state: 'good-unknown', detail: `the key is not among those allowed${date === undefined ? '' : ` on ${date}`} in ${allowed}${/no (?:principal|key) matched/i.test(reason) || reason === '' ? '' : ` (${reason})`}` };
}

const isThere = (path: string): Promise<boolean> => access(path, constants.R_OK).then(() => true, () => false);

async function verifyByGpg(manifestPath: string, signaturePath: string): Promise<SignatureReport> {
    const program = await gpgProgram();
    if (!program) {
        return { state: 'not-checked', format: 'openpgp', detail: `${missing('gpg')}; it comes with GnuPG` };
    }
    // Keys are not fetched: nothing goes over the network.
    const { status, stdout, stderr } = await run(program, ['--batch', '--no-auto-key-retrieve', '--status-fd=1', '--verify', signaturePath, manifestPath]);
    if (status === undefined) {
        return { state: 'not-checked', format: 'openpgp', detail: `gpg would not run: ${firstLine(stderr)}` };
    }
    const says = (word: string) => new RegExp(`^\\[GNUPG:\\] ${word}\\b ?(.*)$`, 'm').exec(stdout)?.[1];
    const [fingerprint] = (says('VALIDSIG') ?? '').split(' ');
    const signer = (says('GOODSIG') ?? says('EXPKEYSIG') ?? says('REVKEYSIG') ?? says('EXPSIG') ?? '').replace(/^\S+ /, '');
    const known = { format: 'openpgp' as const, ...signer === '' ? {} : { signer }, ...fingerprint ? { key: fingerprint } : {} };
    if (says('NO_PUBKEY') !== undefined && says('BADSIG') === undefined) {
        return { ...known, state: 'not-checked', detail: `the key ${says('NO_PUBKEY') ?? ''} is not in the keyring, so the signature cannot be checked; import it and verify again` };
    }
    if (status !== 0 || says('GOODSIG') === undefined && says('EXPKEYSIG') === undefined) {
        const reason = says('REVKEYSIG') !== undefined ? 'the key is revoked' : says('EXPSIG') !== undefined ? 'the signature has run out' : says('BADSIG') !== undefined ? 'the signature does not belong to this manifest' : firstLine(stderr) || 'gpg cannot read it';
        return { ...known, state: 'bad', detail: reason };
    }
    const isTrusted = says('TRUST_FULLY') !== undefined || says('TRUST_ULTIMATE') !== undefined;
    const isExpired = says('EXPKEYSIG') !== undefined;
    return isTrusted && !isExpired ? { ...known, state: 'good', detail: `good signature by ${signer}` }
        : { ...known, state: 'good-unknown', detail: isExpired ? 'the key has run out since' : 'the key is in the keyring, but nothing there vouches for whose it is' };
}
