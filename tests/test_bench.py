"""Patterns are worked on side by side, and those who work are replaced before they grow too large."""

import os

import pytest
from hypothesis import given
from hypothesis import strategies as st

from packetgen.pipeline import bench
from packetgen.pipeline.order import Order
from packetgen.pipeline.plans import Plan
from packetgen.pipeline.proofs import proof
from packetgen.pipeline.survey import survey
from packetgen.write import next_build
from tests.content_builder import build as write_content
from tests.test_builds import OUT, TWO


@given(st.lists(st.integers()), st.integers(1, 9))
def test_every_job_is_in_one_shift_and_no_shift_is_too_long(jobs, size):
    shifts = list(bench._batched(jobs, size))
    assert [job for shift in shifts for job in shift] == jobs
    assert all(0 < len(shift) <= size for shift in shifts)


@pytest.mark.slow
def test_after_a_shift_others_go_on(tmp_path, monkeypatch):
    """Four jobs, one a worker and shift: two processes make the first two, and two others the rest."""
    monkeypatch.setattr(bench, "_SHIFT", 1)
    order = Order(
        write_content(tmp_path / "content", TWO), tmp_path / "build", as_of=OUT, workers=2
    )
    found = survey(order)
    jobs = Plan(order, found, proof(order.content)).to_do(lambda name: False)
    begun = []
    with next_build(order.build) as staging:
        from packetgen.pipeline.kept_on_disk import KeptOnDisk

        keep = KeptOnDisk(staging.last, {}, staging.scratch)
        with bench.bench(2) as at:
            seen = []
            for job, done in at.all_done([*jobs, *jobs], keep, staging):
                assert not done.fault and done.outputs
                seen.append(job.figures.pattern.id)
                begun.append(frozenset(at._pool._processes))
    assert sorted(seen) == ["fern", "fern", "ivy", "ivy"]
    assert begun[0] == begun[1] and begun[2] == begun[3]
    assert not begun[0] & begun[2] and os.getpid() not in begun[0] | begun[2]
