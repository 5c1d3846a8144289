"""Run by Alembic: applies the steps on the connection that `persistence.migrate` hands over."""

from alembic import context

from persistence.tables import Base

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=Base.metadata,
    render_as_batch=context.config.attributes["connection"].dialect.name == "sqlite",
    transaction_per_migration=False,
)
with context.begin_transaction():
    context.run_migrations()
