import { type App, type ReceiverEvent, SocketModeReceiver } from "@slack/bolt";

/** Bolt acknowledges before anything is stored; here what came is stored first, then acknowledged. */
export class StoreFirstReceiver extends SocketModeReceiver {
  override init(app: App): void {
    const storeFirst = {
      processEvent: async (event: ReceiverEvent): Promise<void> => {
        let answer: unknown;
        const ack = async (response: unknown): Promise<void> => {
          answer = response;
        };
        await app.processEvent({ ...event, ack });
        await event.ack(answer);
      },
    };
    // the receiver uses nothing of the app but this
    super.init(storeFirst as unknown as App);
  }
}
