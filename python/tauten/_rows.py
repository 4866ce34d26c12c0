"""Whole answers on tables: one row for each joint, in columns.

The loop over the rows is in C++. Here tables of different make are taken apart into columns and put together again.
"""
import sys
import warnings
from collections.abc import Mapping

import numpy as np

from tauten import _core, _pint
from tauten._errors import DomainWarning


def _is_a(value, module, name):
    """Whether it is of a class of a module that may not even be there."""
    module = sys.modules.get(module)
    return module is not None and isinstance(value, getattr(module, name))


def _column(question, name, values):
    """A column as float64 in SI, or as objects."""
    if _pint.registry_of(values) is not None:
        unit = _core.unit_of_column(question, name)
        values = _pint.si(name, values, unit or "", f"in {unit}" if unit else "a plain number", unit or "0.12")
    if isinstance(values, np.ma.MaskedArray):
        hidden, values = np.ma.getmaskarray(values), values.data.astype(object)
        values[hidden] = None
    array = np.asarray(values)
    values = np.asarray(values, object) if array.dtype.kind in "US" else array  # numbers among texts stay numbers
    return np.ascontiguousarray(values.ravel(), float if values.dtype.kind in "fiub" else object)


def _warn(columns, stacklevel):
    error = columns["error"]
    wrong = np.flatnonzero(error != "")
    if wrong.size:
        warnings.warn(f"{wrong.size} of {error.size} rows have no answer; the column error says why, first in row "
                      f"{wrong[0] + 1}: {error[wrong[0]]}", DomainWarning, stacklevel=stacklevel)


def _answer(question, table, said, columns, threads, rows):
    parts = {str(name): _column(question, str(name), values) for name, values in table.items()}
    return _core.answer_rows(question, parts, said, columns, rows, threads)


def _frame(table, question, said, columns, threads, warn=False):
    answer = _answer(question, table, said, columns, threads, len(table))
    if warn:
        _warn(answer, stacklevel=6)
    return sys.modules["pandas"].DataFrame(answer, index=table.index, copy=False)


def _records(columns, shape):
    """Columns as one structured array."""
    kind = np.dtype([(name, values.dtype) for name, values in columns.items()])
    records = np.empty(shape, kind)
    for name, values in columns.items():
        records[name] = values.reshape(shape)
    return records


def _block(*arrays, names, **options):
    """One chunk of dask arrays."""
    arrays = np.broadcast_arrays(*arrays)
    answer = _answer(table=dict(zip(names, arrays)), rows=arrays[0].size, **options)
    return _records(answer, arrays[0].shape)


def _lazy(table, options):
    array = sys.modules["dask.array"]
    kind = _block(*([np.empty(0)] * len(table)), names=list(table), **options).dtype
    values = [value if isinstance(value, array.Array) else np.asarray(value) for value in table.values()]
    records = array.map_blocks(_block, *array.broadcast_arrays(*values), names=list(table), **options, dtype=kind,
                               meta=np.empty(0, kind))
    return {name: records[name] for name in kind.names}


def answer(question, table, said, columns, threads):
    """Answers ``question`` for every row of ``table``.

    said: what holds for all rows that do not say it themselves.
    columns: names of the columns of the answer; empty for the usual ones.
    """
    options = dict(question=question, said=said, columns=tuple(columns), threads=threads)
    if _is_a(table, "dask.dataframe", "DataFrame"):
        return table.map_partitions(_frame, **options, meta=_frame(table._meta, **options))
    if _is_a(table, "pandas", "DataFrame"):
        return _frame(table, **options, warn=True)
    if isinstance(table, np.ndarray) and table.dtype.names:
        found = _answer(table={name: table[name] for name in table.dtype.names}, rows=table.size, **options)
        _warn(found, stacklevel=5)
        return _records(found, table.shape)
    if not isinstance(table, Mapping) or not table:
        raise TypeError(f"{question}: a table is a DataFrame, a structured array or a dict of columns, "
                        f"not {type(table).__name__}")
    if any(_is_a(value, "dask.array", "Array") for value in table.values()):
        return _lazy(table, options)
    plain = [value if _pint.registry_of(value) is None else np.asarray(value.magnitude) for value in table.values()]
    shape = np.broadcast_shapes(*(np.shape(value) for value in plain))
    spread = {name: values if np.shape(values) == shape else _spread(values, shape) for name, values in table.items()}
    found = _answer(table=spread, rows=int(np.prod(shape)), **options)
    _warn(found, stacklevel=5)
    return {name: values.reshape(shape) for name, values in found.items()}


def _spread(values, shape):
    if (registry := _pint.registry_of(values)) is not None:
        return registry.Quantity(np.broadcast_to(values.magnitude, shape), values.units)
    if isinstance(values, np.ma.MaskedArray):
        return np.ma.array(np.broadcast_to(values.data, shape), mask=np.broadcast_to(np.ma.getmaskarray(values), shape))
    return np.broadcast_to(values, shape)
