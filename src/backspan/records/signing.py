"""Signs heads of a ledger with a key of its own, so that whoever kept one can show it later.

The key proves which ledger signed. It is no signature of a person, and papers say so. It is made
once, and the file is named only when it is whole: two programs that start together use one key.
"""

from __future__ import annotations

import contextlib
import os
from dataclasses import dataclass, replace
from pathlib import Path

from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey, Ed25519PublicKey
from cryptography.hazmat.primitives.serialization import (
    Encoding,
    NoEncryption,
    PrivateFormat,
    load_pem_private_key,
)

from backspan.core.ledger.receipts import SignedHead
from backspan.records.errors import SigningKeyError
from backspan.records.folders import sync_folder

_FOR_OTHERS = 0o077


@dataclass(frozen=True, slots=True)
class SigningKey:
    """The key of a ledger."""

    _key: Ed25519PrivateKey

    @property
    def public(self) -> str:
        """The part that everybody may know, in hex digits."""
        return self._key.public_key().public_bytes_raw().hex()

    def sign(self, *, site: str, place: int, head: str, at: str) -> SignedHead:
        """The head of a ledger at a place, signed."""
        plain = SignedHead(site, place, head, at, self.public, "")
        return replace(plain, signature=self._key.sign(plain.signed_bytes).hex())


def holds(head: SignedHead) -> bool:
    """Whether the signature is over this head and by the key that it names.

    Whose key that is, is for the caller to know: anybody can sign with a key of their own.
    """
    try:
        key = Ed25519PublicKey.from_public_bytes(bytes.fromhex(head.key))
        key.verify(bytes.fromhex(head.signature), head.signed_bytes)
    except (ValueError, InvalidSignature):
        return False
    return True


def signing_key(path: Path) -> SigningKey:
    """The key in this file; made, readable by its owner alone, where there is none.

    Raises SigningKeyError for a file that is no key, that others can read, or that cannot be made.
    """
    try:
        if not path.exists():
            _make(path)
        if os.name == "posix" and path.stat().st_mode & _FOR_OTHERS:
            raise SigningKeyError(
                f"{path}: found a key that others can read, expected the mode 600: whoever read it"
                " can sign as this ledger"
            )
        key = load_pem_private_key(path.read_bytes(), password=None)
    except OSError as error:
        raise SigningKeyError(
            f"{path}: found {error.strerror or error}, expected a key that can be made and read"
        ) from error
    except (ValueError, TypeError) as error:
        raise SigningKeyError(f"{path}: found no key, expected one in PEM") from error
    if not isinstance(key, Ed25519PrivateKey):
        raise SigningKeyError(f"{path}: found another kind of key, expected Ed25519")
    return SigningKey(key)


def _make(path: Path) -> None:
    raw = Ed25519PrivateKey.generate().private_bytes(
        Encoding.PEM, PrivateFormat.PKCS8, NoEncryption()
    )
    making = path.with_name(f".{path.name}-{os.urandom(8).hex()}")
    file = os.open(making, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    try:
        with os.fdopen(file, "wb") as out:
            out.write(raw)
            out.flush()
            os.fsync(out.fileno())
        # Unlike a change of name, a link never takes the place of a key that is there.
        with contextlib.suppress(FileExistsError):
            os.link(making, path)
    finally:
        making.unlink()
    sync_folder(path.parent)
