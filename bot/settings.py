"""The settings: from the environment, or a file `.env` in the working folder; all begin with KILOPOST_."""

from pathlib import Path

import platformdirs
from pydantic import Field, SecretStr, ValidationError, field_validator
from pydantic_settings import BaseSettings, SettingsConfigDict

from bot.faults import OperatorFault

PREFIX = "KILOPOST_"
ENV_FILE = ".env"


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

    @field_validator("token", "database", "api_url", mode="before")
    @classmethod
    def _trimmed(cls, value: object) -> object:
        """Forgive blanks around a value, as they come with copying."""
        return value.strip() if isinstance(value, str) else value


def load_settings(env_file: Path = Path(ENV_FILE)) -> Settings:
    """Return the settings. An empty one counts as missing. Raises SettingsFault."""
    try:
        return Settings(_env_file=env_file, _env_ignore_empty=True)
    except ValidationError as error:
        lines = (f"{PREFIX}{str(fault['loc'][0]).upper()}: {fault['msg']}" for fault in error.errors())
        raise SettingsFault(tuple(lines)) from None
    except UnicodeDecodeError:
        raise SettingsFault((f"{env_file} is not a text file in UTF-8",)) from None
    except OSError as error:
        raise SettingsFault((f"cannot use {error.filename}: {error.strerror}",)) from None
