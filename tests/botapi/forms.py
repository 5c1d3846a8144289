"""Requests as they come over HTTP: parameters and files of a form, a multipart form or JSON."""

import json
from dataclasses import dataclass
from email.parser import BytesParser
from urllib.parse import parse_qsl


@dataclass(frozen=True)
class Upload:
    """A file that came with a request."""

    name: str
    content: bytes


@dataclass(frozen=True)
class Form:
    """What a request carries. Structured parameters are JSON in a string, as the Bot API has it."""

    parameters: dict[str, str]
    files: dict[str, Upload]

    def text(self, name: str) -> str:
        """Return a parameter, or an empty string."""
        return self.parameters.get(name, "")

    def number(self, name: str, default: int = 0) -> int:
        """Return a whole number; what is none counts as missing, as with the real server."""
        try:
            return int(self.parameters.get(name, default))
        except ValueError:
            return default


def decode(content_type: str, body: bytes) -> Form:
    """Read a request's body."""
    if content_type.startswith("multipart/form-data"):
        return _multipart(content_type, body)
    if content_type.startswith("application/json"):
        values = json.loads(body or b"{}")
        return Form({k: v if isinstance(v, str) else json.dumps(v) for k, v in values.items()}, {})
    return Form(dict(parse_qsl(body.decode(), keep_blank_values=True)), {})


def _multipart(content_type: str, body: bytes) -> Form:
    message = BytesParser().parsebytes(f"Content-Type: {content_type}\r\n\r\n".encode() + body)
    parameters: dict[str, str] = {}
    files: dict[str, Upload] = {}
    for part in message.walk():
        name = part.get_param("name", header="content-disposition")
        content = part.get_payload(decode=True)
        if not isinstance(name, str) or not isinstance(content, bytes):
            continue
        file_name = part.get_filename()
        if file_name is None:
            parameters[name] = content.decode()
        else:
            files[name] = Upload(file_name, content)
    return Form(parameters, files)
