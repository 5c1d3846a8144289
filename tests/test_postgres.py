"""The tests' own PostgreSQL: each test that asks gets a database of its own, on a server nobody else sees."""

import os

import pytest
from sqlalchemy import create_engine, text
from sqlalchemy.exc import OperationalError
from sqlalchemy.pool import NullPool

from tests.postgres import Server, find_programs, running


def test_each_database_is_fresh_and_its_own(postgres_server: Server) -> None:
    with postgres_server.database("first") as first, postgres_server.database("second") as second:
        for url in (first, second):
            with create_engine(url, poolclass=NullPool).begin() as connection:
                connection.execute(text("CREATE TABLE lift (kg numeric)"))
                assert connection.scalar(text("SELECT count(*) FROM lift")) == 0


def test_a_database_goes_even_where_a_connection_was_left_open(postgres_server: Server) -> None:
    with postgres_server.database("left") as url:
        leaked = create_engine(url).connect()
    with postgres_server.database("left"), pytest.raises(OperationalError):
        leaked.execute(text("SELECT 1"))
    leaked.close()


def test_the_database_is_reached_by_url(postgres_url: str) -> None:
    with create_engine(postgres_url, poolclass=NullPool).connect() as connection:
        assert connection.scalar(text("SHOW listen_addresses")) == ""
        assert connection.scalar(text("SHOW server_encoding")) == "UTF8"


def test_nothing_is_left_of_a_server(postgres_server: Server) -> None:
    programs = find_programs()
    assert programs is not None
    with running(programs) as server:
        assert server.folder != postgres_server.folder
        process = int((server.folder / "data" / "postmaster.pid").read_text("utf-8").split()[0])
    assert not server.folder.exists()
    with pytest.raises(ProcessLookupError):
        os.kill(process, 0)
