"""Whole answers on tables: one row for each joint, in columns.

The loop over the rows is in C++. Here tables of different make are taken apart into columns and put together again.
"""
import sys
import warnings
from collections.abc import Mapping

import numpy as np

from tauten import _core, _pint
from tauten._errors import DomainWarning, Error


def _is_a(value, module, name):
    """Whether it is of a class of a module that may not even be there."""
    module = sys.modules.get(module)
    return module is not None and isinstance(value, getattr(module, name))


def _objects(values):
    """A column of the items as they are, whatever they are."""
    array = np.empty(len(values), object)
    for row, value in enumerate(values):
        array[row] = value
    return array


def _plain(question, name, values):
    """Values with a shape, in SI if they came with a unit of Pint."""
    if _pint.registry_of(values) is not None:
        known = _core.unit_of_column(question, name)
        return values.magnitude if known is None else _pint.of_column(name, values, *known)
    if isinstance(values, (list, tuple)):
        if any(_pint.registry_of(value) is not None for value in values):  # NumPy would take their units away
            return _objects(values)
        try:
            array = np.asarray(values)
            return array if array.dtype.kind not in "US" else np.asarray(values, object)  # numbers stay numbers
        except ValueError:  # lists of several lengths among them
            return _objects(values)
    return values


def _column(question, name, values):
    """A column as float64 in SI, or as objects; None if the question has no such key."""
    known = _core.unit_of_column(question, name)
    if known is None:
        return None
    if isinstance(values, np.ma.MaskedArray):
        hidden, values = np.ma.getmaskarray(values), values.data.astype(object)
        values[hidden] = None
    array = np.asarray(values)
    if array.dtype.kind in "mM":
        unit, example = known
        raise Error(f"{name}: the column holds times ({array.dtype}), but must hold numbers{unit and f' in {unit}'} or "
                    f"texts like {example}", name)
    return np.ascontiguousarray(array.ravel(), float if array.dtype.kind in "fiub" else object)


def _warn(columns, stacklevel):
    error = columns["error"]
    wrong = np.flatnonzero(error != "")
    if wrong.size:
        warnings.warn(f"{wrong.size} of {error.size} rows have no answer; the column error gives the reason, first in row "
                      f"{wrong[0] + 1}: {error[wrong[0]]}", DomainWarning, stacklevel=stacklevel)


def _answer(question, table, said, columns, jobs, rows):
    parts = [(str(name), _column(question, str(name), values)) for name, values in table.items()]
    return _core.answer_rows(question, parts, said, columns, rows, jobs)


def _frame(table, question, said, columns, jobs, warn=False):
    answer = _answer(question, table, said, columns, jobs, len(table))
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
    table, shape = _broadcast(dict(zip(names, arrays)))
    return _records(_answer(table=table, rows=int(np.prod(shape)), **options), shape)


def _lazy(table, options):
    array = sys.modules["dask.array"]
    kind = _block(*([np.empty(0)] * len(table)), names=list(table), **options).dtype
    # The chunks broadcast by themselves: dask's own broadcasting takes their masks away.
    values = [value if isinstance(value, array.Array) else array.asanyarray(np.asanyarray(value))
              for value in table.values()]
    axes = [tuple(range(value.ndim))[::-1] for value in values]
    records = array.blockwise(_block, max(axes, key=len), *(part for pair in zip(values, axes) for part in pair),
                              names=list(table), **options, dtype=kind, meta=np.empty(0, kind))
    return {name: records[name] for name in kind.names}


def answer(question, table, said, columns, jobs):
    """Answers ``question`` for every row of ``table``.

    said: what holds for all rows that do not say it themselves.
    columns: names of the columns of the answer, or one name; empty for the standard ones.
    """
    columns = (columns,) if isinstance(columns, str) else columns
    options = dict(question=question, said=said, columns=tuple(columns), jobs=jobs)
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
    table = {name: _plain(question, str(name), values) for name, values in table.items()}
    if any(_is_a(value, "dask.array", "Array") for value in table.values()):
        return _lazy(table, options)
    spread, shape = _broadcast(table)
    found = _answer(table=spread, rows=int(np.prod(shape)), **options)
    _warn(found, stacklevel=5)
    return {name: values.reshape(shape) for name, values in found.items()}


def _broadcast(table):
    """Columns of one shape, and the shape. Masks stay, which NumPy's own broadcasting takes away."""
    shape = np.broadcast_shapes(*(np.shape(values) for values in table.values()))
    spread = {name: values if np.shape(values) == shape else _spread(values, shape) for name, values in table.items()}
    return spread, shape


def _spread(values, shape):
    if isinstance(values, np.ma.MaskedArray):
        return np.ma.array(np.broadcast_to(values.data, shape), mask=np.broadcast_to(np.ma.getmaskarray(values), shape))
    return np.broadcast_to(values, shape)
