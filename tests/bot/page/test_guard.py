"""Nobody comes in but this machine's own browser, with the secret, from the page itself."""

import pytest

from tests.bot.page.conftest import Asking

pytestmark = pytest.mark.asyncio(loop_scope="module")

ADAEZE = "local:Adaeze"


async def test_every_answer_forbids_what_the_page_does_not_need(asking: Asking) -> None:
    for path in (asking.guard.path, f"{asking.guard.path}state", "/", "/nothing"):
        headers = (await asking.client.get(path)).headers
        rules = dict(
            each.strip().partition(" ")[::2] for each in headers["Content-Security-Policy"].split(";")
        )
        assert rules["default-src"] == "'none'"
        assert {rules[name] for name in ("script-src", "style-src", "img-src", "connect-src")} == {"'self'"}
        assert {rules[name] for name in ("base-uri", "form-action", "frame-ancestors")} == {"'none'"}
        assert headers["Referrer-Policy"] == "no-referrer"
        assert headers["X-Content-Type-Options"] == "nosniff"
        assert headers["Cache-Control"] == "no-store"


@pytest.mark.parametrize("path", ["/", "/page.js", "/state", "/secret/state", "/favicon.ico"])
async def test_without_the_secret_there_is_nothing(asking: Asking, path: str) -> None:
    assert (await asking.client.get(path)).status_code == 404


async def test_a_secret_that_is_off_by_a_letter_is_wrong(asking: Asking) -> None:
    secret = asking.guard.path.strip("/")
    wrong = secret[:-1] + ("A" if secret[-1] != "A" else "B")
    assert len(secret) >= 43
    assert (await asking.client.get(f"/{wrong}/state")).status_code == 404


@pytest.mark.parametrize(
    "host", ["evil.example", "127.0.0.1", "127.0.0.1:1", "localhost.evil.example:{port}", ""]
)
async def test_a_foreign_name_for_this_machine_is_refused(asking: Asking, host: str) -> None:
    headers = {"Host": host.format(port=asking.guard.port)}
    assert (await asking.client.get(f"{asking.guard.path}state", headers=headers)).status_code == 403


async def test_it_answers_to_the_usual_name_of_this_machine(asking: Asking) -> None:
    headers = {"Host": f"localhost:{asking.guard.port}"}
    assert (await asking.client.get(f"{asking.guard.path}state", headers=headers)).status_code == 200


@pytest.mark.parametrize(
    "headers",
    [
        {},
        {"Origin": "null"},
        {"Origin": "http://evil.example"},
        {"Origin": "https://127.0.0.1:{port}"},
        {"Origin": "http://127.0.0.1:1"},
        {"Origin": "http://127.0.0.1:{port}", "Sec-Fetch-Site": "cross-site"},
        {"Origin": "http://127.0.0.1:{port}", "Sec-Fetch-Site": "same-site"},
    ],
)
async def test_another_site_cannot_post(asking: Asking, headers: dict[str, str]) -> None:
    named = {name: value.format(port=asking.guard.port) for name, value in headers.items()}
    before = await asking.said(ADAEZE)
    body = {"chat": ADAEZE, "text": "squat 60x6"}
    answer = await asking.client.post(f"{asking.guard.path}say", json=body, headers=named)
    assert answer.status_code == 403
    assert await asking.said(ADAEZE) == before


async def test_another_site_cannot_show_what_is_here(asking: Asking) -> None:
    path = f"{asking.guard.path}state"
    assert (await asking.client.get(path, headers={"Sec-Fetch-Site": "cross-site"})).status_code == 403
    opened = {"Sec-Fetch-Site": "cross-site", "Sec-Fetch-Mode": "navigate"}
    assert (await asking.client.get(asking.guard.path, headers=opened)).status_code == 200


async def test_what_the_browser_is_started_with_opens_the_page_once(asking: Asking) -> None:
    once = asking.guard.path_once
    first = await asking.client.get(once)
    assert (first.status_code, first.headers["Location"]) == (303, asking.guard.path)
    assert (await asking.client.get(once)).status_code == 404
