"""The settings: from the environment, or a file `.env` in the working folder; all begin with KILOPOST_."""

import os
import re
from pathlib import Path
from urllib.parse import urlsplit

import platformdirs
from dotenv import dotenv_values
from pydantic import Field, SecretStr, ValidationError, field_validator
from pydantic_settings import BaseSettings, SettingsConfigDict

from bot.faults import OperatorFault

PREFIX = "KILOPOST_"
ENV_FILE = ".env"
LAST_PORT = 65535
OTHERS = frozenset({"KILOPOST_PYTHON"})
"""What begins so without being a setting of the bot: which Python sets up the checkout."""


class SettingsFault(OperatorFault):
    """Settings that cannot be used. Never shows the value of a secret."""


def default_database() -> str:
    """Return the URL of the SQLite file in the user's own data folder, which is made where it is missing."""
    folder = platformdirs.user_data_path("kilopost", ensure_exists=True)
    return f"sqlite:///{folder / 'kilopost.sqlite3'}"


class Settings(BaseSettings):
    """What a person who runs the bot can choose."""

    model_config = SettingsConfigDict(env_prefix=PREFIX, extra="ignore", frozen=True)

    token: SecretStr | None = None
    """The bot's token, as its platform gave it; only `serve` needs one."""
    database: str = Field(default_factory=default_database, repr=False)
    """A SQLAlchemy URL. It may hold a password, and so is kept out of what is printed."""
    api_url: str = "https://api.telegram.org"
    """The Bot API server."""
    webhook_url: str | None = None
    """Where the platform is to post what comes in, https and public; where missing, the bot asks for it."""
    webhook_listen: str = "127.0.0.1:8443"
    """Where the bot listens for that, behind whatever stands in front of it."""
    webhook_secret: SecretStr | None = None
    """What the platform shows with each post; where missing, it is made of the token."""
    keep_days: int | None = Field(default=None, ge=30)
    """For how many days messages are kept, people's and the bot's; where missing, for ever."""
    monitor: str | None = None
    """Where health and figures are served, such as 127.0.0.1:9464; nowhere where missing."""

    @field_validator("*", mode="before")
    @classmethod
    def _trimmed(cls, value: object) -> object:
        """Forgive blanks around a value, as they come with copying."""
        return value.strip() if isinstance(value, str) else value

    @field_validator("token")
    @classmethod
    def _like_a_token(cls, value: SecretStr | None) -> SecretStr | None:
        return _secret(value, r"\d+:[\w-]+", "it is not like a token, which is NUMBER:LETTERS")

    @field_validator("webhook_secret")
    @classmethod
    def _like_a_secret(cls, value: SecretStr | None) -> SecretStr | None:
        return _secret(value, r"[\w-]{16,256}", "it has to be 16 to 256 letters, digits, _ and -")

    @field_validator("api_url")
    @classmethod
    def _reachable(cls, value: str) -> str:
        return _url(value, "http", "https")

    @field_validator("webhook_url")
    @classmethod
    def _public(cls, value: str | None) -> str | None:
        return None if value is None else _url(value, "https")

    @field_validator("webhook_listen", "monitor")
    @classmethod
    def _listened_on(cls, value: str | None) -> str | None:
        if value is not None:
            host_and_port(value)
        return value


def load_settings(env_file: Path = Path(ENV_FILE)) -> Settings:
    """Return the settings. An empty one counts as missing. Raises SettingsFault, with all that is wrong."""
    try:
        lines = [f"{name} is no setting of Kilopost" for name in _unknown(env_file)]
        try:
            settings = Settings(_env_file=env_file, _env_ignore_empty=True)
        except ValidationError as error:
            lines += [_line(fault["loc"][0], fault["msg"]) for fault in error.errors()]
            raise SettingsFault(tuple(lines)) from None
        if lines:
            raise SettingsFault(tuple(lines))
        return settings
    except UnicodeDecodeError:
        raise SettingsFault((f"{env_file} is not a text file in UTF-8",)) from None
    except OSError as error:
        raise SettingsFault((f"cannot use {error.filename}: {error.strerror}",)) from None


def host_and_port(value: str) -> tuple[str, int]:
    """Return the two parts of HOST:PORT; a host with colons stands in brackets. Raises ValueError."""
    host, colon, port = value.rpartition(":")
    bare = host[1:-1] if host.startswith("[") and host.endswith("]") else host
    if not colon or not bare or not port.isascii() or not port.isdecimal() or int(port) > LAST_PORT:
        raise ValueError("it has to be HOST:PORT, such as 127.0.0.1:9464")
    return bare, int(port)


def _unknown(env_file: Path) -> list[str]:
    """Return the names that begin like a setting and are none: a slip would otherwise go unnoticed."""
    known = {f"{PREFIX}{name.upper()}" for name in Settings.model_fields} | OTHERS
    named = {*os.environ, *(dotenv_values(env_file) if env_file.is_file() else ())}
    return sorted(name for name in named if name.upper().startswith(PREFIX) and name.upper() not in known)


def _line(field: object, message: str) -> str:
    return f"{PREFIX}{str(field).upper()}: {message.removeprefix('Value error, ')}"


def _secret(value: SecretStr | None, pattern: str, fault: str) -> SecretStr | None:
    if value is not None and re.fullmatch(pattern, value.get_secret_value(), re.ASCII) is None:
        raise ValueError(fault)
    return value


def _url(value: str, *schemes: str) -> str:
    try:
        parsed = urlsplit(value)
        usable = parsed.scheme in schemes and parsed.hostname and parsed.port != 0
    except ValueError as error:
        raise ValueError(str(error)) from None
    if not usable:
        raise ValueError(
            f"it has to begin with {' or '.join(f'{each}://' for each in schemes)} and name a host"
        )
    return value
