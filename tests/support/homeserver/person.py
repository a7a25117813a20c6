"""A person on matrix-nio, a client with an encryption library of its own (libolm).

Commands come as JSON lines on standard input, everything that is seen goes out as JSON lines. What
the client says about itself goes to standard error. A new key is made for a room every so many
messages, as the room's state asks; the client by itself does so every hundred.
"""
import asyncio, base64, io, json, logging, os, sys
from nio import AsyncClient, AsyncClientConfig, MegolmEvent, RoomMessage, RoomMessageText, RoomMessageNotice, UnknownEvent
from nio import EnableEncryptionBuilder, RoomPreset, RoomSendResponse, InviteMemberEvent, RedactionEvent, RoomMessageFile, RoomMessageImage, RoomEncryptedFile, RoomEncryptedImage

server, user, password, store = sys.argv[1:5]
messages_a_key = int(sys.argv[5])
logging.basicConfig(stream=sys.stderr, level=logging.INFO, format="%(asctime)s %(name)s %(message)s")

def say(**what):
    print(json.dumps(what), flush=True)

async def main():
    os.makedirs(store, exist_ok=True)
    client = AsyncClient(server, user, device_id="NIO" + user[1:4].upper(), store_path=store,
                         config=AsyncClientConfig(store_sync_tokens=True, encryption_enabled=True, max_timeouts=0, request_timeout=20))
    await client.login(password)

    def seen(room, event):
        source = event.source
        content = source.get("content", {})
        say(kind="event", room=room.room_id, id=event.event_id, sender=event.sender, type=source.get("type"),
            content=content, encrypted=bool(getattr(event, "decrypted", False)),
            locked=isinstance(event, MegolmEvent), ts=event.server_timestamp)

    client.add_event_callback(seen, (RoomMessage, MegolmEvent, RedactionEvent, RoomEncryptedFile, RoomEncryptedImage))
    await client.sync(timeout=0, full_state=True)
    if client.should_upload_keys:
        await client.keys_upload()
    say(kind="ready", user=client.user_id)

    async def share(room_id):
        """nio takes a key as shared although the request for it failed; then nobody could read on."""
        room = client.rooms[room_id]
        if not room.encrypted:
            return
        known = client.olm.outbound_group_sessions.get(room_id)
        if known is not None and known.message_count >= messages_a_key:
            client.invalidate_outbound_session(room_id)
        if not client.olm.should_share_group_session(room_id):
            return
        await client.share_group_session(room_id, ignore_unverified_devices=True)
        session = client.olm.outbound_group_sessions[room_id]
        for user in room.users:
            for device in client.device_store.active_user_devices(user):
                if (user, device.id) not in session.users_shared_with | session.users_ignored and device.id != client.device_id:
                    client.invalidate_outbound_session(room_id)
                    raise Exception("the key did not reach " + device.id)

    async def command(line):
        what = json.loads(line)
        answer = {"kind": "done", "n": what["n"]}
        try:
            if what["do"] == "join":
                await client.join(what["room"])
            elif what["do"] == "send":
                for attempt in range(400):
                    try:
                        if client.should_query_keys:
                            await client.keys_query()
                        await share(what["room"])
                        sent = await client.room_send(what["room"], what.get("type", "m.room.message"), what["content"],
                                                      tx_id=what["tx"], ignore_unverified_devices=True)
                        if isinstance(sent, RoomSendResponse):
                            answer["event"] = sent.event_id
                            break
                    except Exception as error:
                        sent = repr(error)
                    await asyncio.sleep(0.3)
                else:
                    answer["error"] = str(sent)
            elif what["do"] == "file":
                raw = base64.b64decode(what["bytes"])
                up, keys = await client.upload(io.BytesIO(raw), content_type=what["type"], filename=what["name"],
                                               encrypt=True, filesize=len(raw))
                content = {"msgtype": "m.image", "body": what["name"], "info": {"size": len(raw), "mimetype": what["type"]},
                           "file": {"url": up.content_uri, **{k: keys[k] for k in ("key", "iv", "hashes", "v")}}}
                sent = await client.room_send(what["room"], "m.room.message", content, tx_id=what["tx"],
                                              ignore_unverified_devices=True)
                answer["event"] = sent.event_id
            elif what["do"] == "talk":
                made = await client.room_create(is_direct=True, invite=[what["with"]], preset=RoomPreset.trusted_private_chat,
                                                initial_state=[EnableEncryptionBuilder().as_dict()])
                answer["room"] = made.room_id
                while what["with"] not in getattr(client.rooms.get(made.room_id), "users", {}) or client.rooms[made.room_id].invited_users:
                    await asyncio.sleep(0.1)
            elif what["do"] == "forget":
                client.invalidate_outbound_session(what["room"])
            elif what["do"] == "redact":
                await client.room_redact(what["room"], what["event"])
            elif what["do"] == "devices":
                answer["devices"] = [d.id for d in client.device_store.active_user_devices(what["user"])]
        except Exception as error:
            answer["error"] = repr(error)
        say(**answer)

    async def commands():
        reader = asyncio.StreamReader(limit=2**22)
        await asyncio.get_running_loop().connect_read_pipe(lambda: asyncio.StreamReaderProtocol(reader), sys.stdin)
        while line := await reader.readline():
            await command(line)
        os._exit(0)

    async def syncing():
        while True:
            try:
                await client.sync(timeout=3000, sync_filter={"room": {"timeline": {"limit": 100}}})
                if client.should_upload_keys:
                    await client.keys_upload()
                if client.should_query_keys:
                    await client.keys_query()
                await client.send_to_device_messages()
            except Exception as error:
                logging.info("sync: %r", error)
                await asyncio.sleep(0.3)

    await asyncio.gather(commands(), syncing())

asyncio.run(main())
