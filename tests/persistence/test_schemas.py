"""Several bots on one PostgreSQL, each in a schema of its own."""

from sqlalchemy import text

from persistence.engine import open_engine, writing
from persistence.store import open_store
from tests.persistence.people import NOON, settled
from tests.persistence.people import text as typed


def test_two_bots_share_a_database_by_a_schema_each(postgres_url: str) -> None:
    engine = open_engine(postgres_url)
    with writing(engine) as connection:
        connection.execute(text("CREATE SCHEMA second"))
    engine.dispose()
    first, second = open_store(postgres_url), open_store(f"{postgres_url}&options=-csearch_path%3Dsecond")
    settled(first, "Noor")
    settled(second, "Piet")
    for store in (first, second):  # one chat, known to both
        store.receive([typed("telegram:77", "hello", "1")])
        assert store.queues(NOON).inbox.length == 1
    assert {person.name for person in first.people()} == {"Ilse", "Noor"}
    assert {person.name for person in second.people()} == {"Ilse", "Piet"}
    first.close()
    second.close()
