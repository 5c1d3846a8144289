"""The migrations: the same tables as the models, forwards and back, and no database touched but ours.

A word added to one of the closed lists of the domain (a remedy, a reason …) needs a step, too, since the
constraints name the words.
"""

from concurrent.futures import ThreadPoolExecutor
from typing import Any

import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from sqlalchemy import Engine, inspect, text

from domain.state import ClientState
from persistence.engine import open_engine, writing
from persistence.faults import DatabaseNewer, DatabaseOlder, NotOurDatabase
from persistence.migrate import known_steps, migrate, require_current
from persistence.migrations import HEAD
from persistence.store import Store
from persistence.tables import Base
from tests.persistence.people import settled, state_of


@pytest.fixture
def engine(bare_engine: Engine) -> Engine:
    """A database of its own, migrated, since its tables will be changed."""
    migrate(bare_engine)
    return bare_engine


def described(engine: Engine) -> dict[str, Any]:
    """Return all that the database itself can tell of its tables, in a form that can be compared."""
    found = inspect(engine)
    return {
        table: {
            "columns": [
                (column["name"], str(column["type"]), column["nullable"], column["default"])
                for column in found.get_columns(table)
            ],
            "key": found.get_pk_constraint(table),
            "points at": sorted(str(each) for each in found.get_foreign_keys(table)),
            "checks": sorted((each["name"], each["sqltext"]) for each in found.get_check_constraints(table)),
            "once": sorted(str(each) for each in found.get_unique_constraints(table)),
            "indexes": sorted(
                (
                    each["name"],
                    tuple(each["column_names"]),
                    sorted(map(str, each["dialect_options"].values())),
                )
                for each in found.get_indexes(table)
            ),
        }
        for table in found.get_table_names()
        if table != "alembic_version"
    }


def test_the_migrations_build_what_the_models_say(bare_engine: Engine) -> None:
    with writing(bare_engine) as connection:
        Base.metadata.create_all(connection)
    wanted = described(bare_engine)
    with writing(bare_engine) as connection:
        Base.metadata.drop_all(connection)
    migrate(bare_engine)
    assert described(bare_engine) == wanted
    with bare_engine.connect() as connection:
        assert compare_metadata(MigrationContext.configure(connection), Base.metadata) == []


def test_the_latest_step_is_the_one_that_a_start_looks_for() -> None:
    assert known_steps()[-1] == HEAD


def test_migrating_again_changes_nothing(engine: Engine) -> None:
    before = described(engine)
    migrate(engine)
    require_current(engine)
    assert described(engine) == before


def test_back_to_nothing_and_forwards_again_with_people_in(engine: Engine) -> None:
    settled(Store(engine), "Noor")
    migrate(engine, "base")
    assert set(inspect(engine).get_table_names()) == {"alembic_version"}
    migrate(engine)
    settled(Store(engine), "Noor")
    assert isinstance(state_of(Store(engine), "telegram:Noor"), ClientState)


def test_coaches_from_before_there_were_digests_are_woken(engine: Engine) -> None:
    people = settled(Store(engine), "Noor")
    waking = text("SELECT number, wake_at IS NULL AS never FROM people ORDER BY number")
    migrate(engine, "0002")
    with writing(engine) as connection:
        connection.execute(text("UPDATE people SET wake_at = NULL"))
    migrate(engine)
    with engine.connect() as connection:
        never = {row.number for row in connection.execute(waking) if row.never}
    assert never == {people["Noor"]}


def test_workers_that_start_at_once_migrate_once(url: str) -> None:
    engines = [open_engine(url) for _ in range(4)]
    with ThreadPoolExecutor(4) as pool:
        list(pool.map(migrate, engines))
    require_current(engines[0])
    assert set(Base.metadata.tables) <= set(inspect(engines[0]).get_table_names())
    for engine in engines:
        engine.dispose()


def test_a_newer_database_is_refused_and_left_alone(engine: Engine) -> None:
    with writing(engine) as connection:
        connection.execute(text("UPDATE alembic_version SET version_num = '9999'"))
    before = described(engine)
    for refuse in (migrate, require_current):
        with pytest.raises(DatabaseNewer) as fault:
            refuse(engine)
        assert fault.value.revision == "9999"
    assert described(engine) == before


def test_an_empty_database_is_older_than_wanted(bare_engine: Engine) -> None:
    with pytest.raises(DatabaseOlder) as fault:
        require_current(bare_engine)
    assert fault.value.revision is None


def test_a_database_of_something_else_is_refused_and_left_alone(bare_engine: Engine) -> None:
    with writing(bare_engine) as connection:
        connection.execute(text("CREATE TABLE recipes (name TEXT)"))
    for refuse in (migrate, require_current):
        with pytest.raises(NotOurDatabase, match="recipes"):
            refuse(bare_engine)
    assert inspect(bare_engine).get_table_names() == ["recipes"]
