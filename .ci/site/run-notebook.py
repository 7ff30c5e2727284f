"""Runs the code cells of a notebook in the kernel named first, in the folder named second, and prints what they gave.

Cells come in as a JSON list of texts; a list of outputs for each goes out. The kernel tells that it is idle before it
sends the last outputs, so reading goes on for a moment: nbconvert stops there and loses some.
"""

import json
import queue
import sys
import time

from jupyter_client.manager import KernelManager

AFTER_IDLE = 0.3
LONGEST = 120


def read(client, message, until):
    outputs = []
    while time.monotonic() < until:
        try:
            got = client.get_iopub_msg(timeout=max(0.01, until - time.monotonic()))
        except queue.Empty:
            break
        if got["parent_header"].get("msg_id") != message:
            continue
        kind, content = got["msg_type"], got["content"]
        if kind == "status" and content["execution_state"] == "idle":
            until = min(until, time.monotonic() + AFTER_IDLE)
        elif kind == "stream" and outputs and outputs[-1].get("name") == content["name"]:
            outputs[-1]["text"] += content["text"]
        elif kind == "stream":
            outputs.append({"output_type": kind, "name": content["name"], "text": content["text"]})
        elif kind in ("execute_result", "display_data"):
            outputs.append({"output_type": "display_data", "data": content["data"], "metadata": {}})
        elif kind == "error":
            outputs.append({"output_type": kind, "ename": content["ename"], "evalue": content["evalue"], "traceback": []})
    return outputs


def main():
    kernel, folder = sys.argv[1:]
    manager = KernelManager(kernel_name=kernel)
    manager.start_kernel(cwd=folder)
    client = manager.client()
    client.start_channels()
    try:
        client.wait_for_ready(timeout=LONGEST)
        given = []
        for cell in json.load(sys.stdin):
            given.append(read(client, client.execute(cell), time.monotonic() + LONGEST))
        json.dump(given, sys.stdout)
    finally:
        client.stop_channels()
        manager.shutdown_kernel(now=True)


main()
