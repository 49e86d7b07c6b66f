/** The client's settings that features ask for. Everything is on where no client is connected, as in tests. */
import type { GarboardServices } from './services.js';

/** Whether a setting `garboard.<section>` or `garboard.<section>.<name>` is on; it is unless switched off. */
export async function isSwitchedOn(services: GarboardServices, section: string, name?: string): Promise<boolean> {
    if (!services.shared.lsp.Connection) {
        return true;
    }
    const value: unknown = await services.shared.workspace.ConfigurationProvider.getConfiguration('garboard', section);
    const setting: unknown = name !== undefined && typeof value === 'object' && value !== null ? Reflect.get(value, name) : value;
    return setting !== false;
}
