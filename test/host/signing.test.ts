/** Signatures made and checked by ssh-keygen and gpg, with keys made for the test. */
import { execFileSync } from 'node:child_process';
import { chmodSync, cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { sha256 } from '../../src/host/issue-folder.js';
import { findProgram } from '../../src/host/programs.js';
import { signManifest } from '../../src/host/signing.js';
import { verifiedText } from '../../src/cli/verify.js';
import { verifyIssues, type VerifiedIssue } from '../../src/host/verify.js';
import { made, workspace, type Workspace } from './issue-sample.js';

const [ssh, gpg, git] = await Promise.all(['ssh-keygen', 'gpg', 'git'].map(findProgram));
let space: Workspace;
const environment = { ...process.env };
const at = (name: string): string => join(space.root, name);
/** Settings of the user's git, for the test alone. */
const gitSettings = (text: string): void => writeFileSync(at('gitconfig'), text);
const verified = async (folder: string, allowed?: string): Promise<VerifiedIssue> => {
    const [issue] = await verifyIssues(folder, allowed === undefined ? {} : { allowedSigners: allowed });
    if (!issue) {
        throw new Error('No issue');
    }
    return issue;
};
/** A copy of an issue, which a test may spoil. */
let copies = 0;
const copyOf = (folder: string): string => {
    const other = at(`copy-${++copies}`);
    cpSync(folder, other, { recursive: true });
    return other;
};

let signed: string;

beforeAll(async () => {
    space = workspace();
    process.env['GIT_CONFIG_GLOBAL'] = at('gitconfig');
    process.env['GIT_CONFIG_NOSYSTEM'] = '1';
    gitSettings('');
    for (const name of ['key', 'other']) {
        execFileSync('ssh-keygen', ['-q', '-t', 'ed25519', '-N', '', '-C', `${name}@firm.invalid`, '-f', at(name)]);
    }
    writeFileSync(at('allowed'), `ada@firm.invalid ${readFileSync(at('key.pub'), 'utf8')}`);
    writeFileSync(at('strangers'), `bo@other.invalid ${readFileSync(at('other.pub'), 'utf8')}`);
    const result = made(await space.issue({ sign: { key: at('key') } }));
    expect(result.signature).toBe('manifest.json.sig');
    signed = result.folder;
}, 60_000);
afterEach(() => {
    Object.assign(process.env, environment, { GIT_CONFIG_GLOBAL: at('gitconfig'), GIT_CONFIG_NOSYSTEM: '1' });
    gitSettings('');
});
afterAll(() => {
    for (const name of ['GIT_CONFIG_GLOBAL', 'GIT_CONFIG_NOSYSTEM', 'GNUPGHOME']) {
        if (environment[name] === undefined) {
            delete process.env[name];
        } else {
            process.env[name] = environment[name];
        }
    }
    rmSync(space.root, { recursive: true, force: true });
});

describe.runIf(ssh)('by an SSH key', () => {
    it('is good, by whom the allowed signers name', async () => {
        const fingerprint = /SHA256:\S+/.exec(execFileSync('ssh-keygen', ['-l', '-f', at('key.pub')], { encoding: 'utf8' }))?.[0];
        expect(await verified(signed, at('allowed'))).toMatchObject({ verdict: 'unchanged', signature: { state: 'good', format: 'ssh', signer: 'ada@firm.invalid', key: fingerprint } });
        // The same tool, called by hand.
        const said = execFileSync('ssh-keygen', ['-Y', 'verify', '-n', 'garboard', '-I', 'ada@firm.invalid', '-f', at('allowed'), '-s', join(signed, 'manifest.json.sig')], { input: readFileSync(join(signed, 'manifest.json')), encoding: 'utf8' });
        expect(said).toContain('Good "garboard" signature for ada@firm.invalid');
    });

    it('is good, by somebody not allowed, where the list has others only, or there is none', async () => {
        expect(await verified(signed, at('strangers'))).toMatchObject({ verdict: 'unchanged', signature: { state: 'good-unknown', detail: expect.stringMatching(/not among those allowed/) } });
        expect(await verified(signed)).toMatchObject({ verdict: 'unchanged', signature: { state: 'good-unknown', detail: expect.stringMatching(/no file of allowed signers/) } });
    });

    it('is taken as on the day of issue where a key has run out since', async () => {
        writeFileSync(at('dated'), `ada@firm.invalid valid-before="20260601" ${readFileSync(at('key.pub'), 'utf8')}`);
        writeFileSync(at('late'), `ada@firm.invalid valid-after="20260601" ${readFileSync(at('key.pub'), 'utf8')}`);
        expect((await verified(signed, at('dated'))).signature?.state).toBe('good');
        expect((await verified(signed, at('late'))).signature?.state).toBe('good-unknown');
    });

    it('says why a key does not count: revoked, or allowed for another purpose; and which file cannot be read', async () => {
        const publicKey = readFileSync(at('key.pub'), 'utf8');
        writeFileSync(at('revoked'), publicKey);
        gitSettings(`[gpg "ssh"]\n    revocationFile = ${at('revoked')}\n`);
        const revoked = await verified(signed, at('allowed'));
        expect(revoked).toMatchObject({ verdict: 'changed', signature: { state: 'bad', signer: 'ada@firm.invalid', detail: expect.stringContaining(`is revoked by ${at('revoked')}`) } });
        expect(verifiedText(revoked)).toContain('Its files agree with its manifest, but its signature CANNOT be relied on.');
        gitSettings(`[gpg "ssh"]\n    revocationFile = ${at('none')}\n`);
        expect((await verified(signed, at('allowed'))).signature).toMatchObject({ state: 'not-checked', detail: expect.stringContaining('revocationFile') });
        gitSettings('');
        writeFileSync(at('for-git'), `ada@firm.invalid namespaces="git" ${publicKey}`);
        expect((await verified(signed, at('for-git'))).signature).toMatchObject({ state: 'good-unknown', detail: expect.stringContaining('not permitted for use in signature namespace') });
        expect((await verified(signed, at('none'))).signature).toMatchObject({ state: 'good-unknown', detail: expect.stringContaining('cannot be read; name the right one with --allowed-signers') });
    });

    it('is wrong for a manifest that was changed, though its digests were made to agree', async () => {
        const folder = copyOf(signed);
        const manifest = readFileSync(join(folder, 'manifest.json'), 'utf8').replace('Ada Rowe', 'Eve Rowe');
        writeFileSync(join(folder, 'manifest.json'), manifest);
        writeFileSync(join(folder, 'manifest.sha256'), `${sha256(manifest)}  manifest.json\n${sha256(readFileSync(join(folder, 'manifest.json.sig')))}  manifest.json.sig\n`);
        expect(await verified(folder, at('allowed'))).toMatchObject({ verdict: 'changed', signature: { state: 'bad' }, faults: [expect.stringMatching(/signature is wrong/)] });
    });

    it('is wrong where it was made for another purpose', async () => {
        const folder = copyOf(signed);
        rmSync(join(folder, 'manifest.json.sig'));
        execFileSync('ssh-keygen', ['-q', '-Y', 'sign', '-n', 'file', '-f', at('key'), join(folder, 'manifest.json')], { stdio: 'ignore' });
        expect((await verified(folder, at('allowed'))).signature?.state).toBe('bad');
    });

    it('is found missing or changed by the digests', async () => {
        const [without, with_] = [copyOf(signed), copyOf(signed)];
        rmSync(join(without, 'manifest.json.sig'));
        writeFileSync(join(with_, 'manifest.json.sig'), `${readFileSync(join(with_, 'manifest.json.sig'), 'utf8')}\n`);
        expect(await verified(without, at('allowed'))).toMatchObject({ verdict: 'changed', signature: null });
        expect((await verified(with_, at('allowed'))).verdict).toBe('changed');
    });

    it('is not checked, and says so, where the tool is missing', async () => {
        process.env['PATH'] = at('nothing');
        expect(await verified(signed, at('allowed'))).toMatchObject({ verdict: 'unchanged', signature: { state: 'not-checked', detail: expect.stringMatching(/ssh-keygen is not installed/) } });
        await expect(signManifest(join(copyOf(signed), 'manifest.json'), { key: at('key') })).rejects.toThrow(/ssh-keygen is not installed/);
    });

    it('a file name cannot pass for an option', async () => {
        const folder = at('-f');
        cpSync(signed, folder, { recursive: true });
        expect((await verified(folder, at('allowed'))).signature?.state).toBe('good');
    });
});

describe.runIf(ssh && git)('as git is set to sign', () => {
    it('takes format, key and allowed signers from the user’s settings', async () => {
        gitSettings(`[gpg]\n\tformat = ssh\n[user]\n\tsigningkey = ${at('key')}\n[gpg "ssh"]\n\tallowedSignersFile = ${at('allowed')}\n`);
        const folder = copyOf(signed);
        rmSync(join(folder, 'manifest.json.sig'));
        expect(await signManifest(join(folder, 'manifest.json'), {})).toBe('manifest.json.sig');
        expect((await verified(folder)).signature).toMatchObject({ state: 'good', signer: 'ada@firm.invalid' });
    });

    it('says what is not set', async () => {
        await expect(signManifest(join(signed, 'manifest.json'), {})).rejects.toThrow(/git is not set to sign: give git config --global user\.signingkey/);
        gitSettings('[gpg]\n\tformat = x509\n');
        await expect(signManifest(join(signed, 'manifest.json'), {})).rejects.toThrow(/set to sign by x509/);
    });

    it.runIf(process.platform !== 'win32')('runs nothing that a repository or the working folder names', async () => {
        const repository = at('repository');
        mkdirSync(repository);
        execFileSync('git', ['init', '-q', repository]);
        const trap = join(repository, 'ssh-keygen');
        writeFileSync(trap, `#!/bin/sh\ntouch ${at('sprung')}\nexit 0\n`);
        chmodSync(trap, 0o755);
        for (const [name, value] of [['gpg.ssh.program', trap], ['gpg.program', trap], ['gpg.format', 'ssh'], ['user.signingkey', at('other')]] as const) {
            execFileSync('git', ['-C', repository, 'config', name, value]);
        }
        const folder = join(repository, 'issued/AR-77-issue-1');
        cpSync(signed, folder, { recursive: true });
        process.env['PATH'] = ['.', '', repository.slice(1), environment['PATH']].join(delimiter);
        const before = process.cwd();
        process.chdir(repository);
        try {
            expect((await verified(folder, at('allowed'))).signature?.state).toBe('good');
            await expect(signManifest(join(folder, 'manifest.json'), {})).rejects.toThrow(/git is not set to sign/);
        } finally {
            process.chdir(before);
        }
        expect(existsSync(at('sprung'))).toBe(false);
        expect(dirname((await findProgram('ssh-keygen')) ?? '')).not.toBe(repository);
    });
});

describe.runIf(gpg && git)('by an OpenPGP key', () => {
    const identity = 'Ada Rowe <ada@firm.invalid>';
    const home = (name: string): void => {
        mkdirSync(at(name), { recursive: true, mode: 0o700 });
        process.env['GNUPGHOME'] = at(name);
    };

    it('is good by a key of one’s own, unknown where the key is not vouched for, not checked without it, and wrong for another manifest', async () => {
        home('gnupg');
        execFileSync('gpg', ['--batch', '--quiet', '--pinentry-mode', 'loopback', '--passphrase', '', '--quick-generate-key', identity, 'ed25519', 'sign', 'never'], { stdio: 'ignore' });
        gitSettings(`[user]\n\tsigningkey = ada@firm.invalid\n`);
        const folder = copyOf(signed);
        rmSync(join(folder, 'manifest.json.sig'));
        writeFileSync(join(folder, 'manifest.sha256'), `${sha256(readFileSync(join(folder, 'manifest.json')))}  manifest.json\n`);
        expect(await signManifest(join(folder, 'manifest.json'), {})).toBe('manifest.json.asc');
        expect(await verified(folder)).toMatchObject({ verdict: 'unchanged', signature: { state: 'good', format: 'openpgp', signer: identity } });

        const key = execFileSync('gpg', ['--armor', '--export', 'ada@firm.invalid']);
        home('gnupg-empty');
        expect(await verified(folder)).toMatchObject({ verdict: 'unchanged', signature: { state: 'not-checked', detail: expect.stringMatching(/not in the keyring/) } });
        execFileSync('gpg', ['--batch', '--quiet', '--import'], { input: key, stdio: ['pipe', 'ignore', 'ignore'] });
        expect((await verified(folder)).signature).toMatchObject({ state: 'good-unknown', signer: identity });

        const manifest = readFileSync(join(folder, 'manifest.json'), 'utf8').replace('Ada Rowe', 'Eve Rowe');
        writeFileSync(join(folder, 'manifest.json'), manifest);
        writeFileSync(join(folder, 'manifest.sha256'), `${sha256(manifest)}  manifest.json\n`);
        expect(await verified(folder)).toMatchObject({ verdict: 'changed', signature: { state: 'bad' } });
        execFileSync('gpgconf', ['--kill', 'all'], { env: { ...process.env, GNUPGHOME: at('gnupg') } });
        execFileSync('gpgconf', ['--kill', 'all'], { env: { ...process.env, GNUPGHOME: at('gnupg-empty') } });
    }, 60_000);
});
