using CsCheck;

namespace Casewright.Store.Tests;

/// <summary>What a store promises, whichever database keeps it.</summary>
public abstract class JobStoreTests
{
    /// <summary>Opens the store of this test once more, as another window or program would.</summary>
    protected abstract JobStore Open();

    [Fact]
    public void A_job_comes_back_as_it_was_saved()
    {
        var created = Open().Create("Attic wall", "text one", "new job");

        var again = Open().Current(created.JobId);

        Assert.Equal(created, again);
        Assert.Equal("text one", again.Text);
        Assert.False(again.CanUndo);
        Assert.Equal("Attic wall", Assert.Single(Open().Jobs()).Name);
    }

    [Fact]
    public void An_edit_made_from_an_older_revision_is_refused_and_changes_nothing()
    {
        var store = Open();
        var id = store.Create("a", "1", "new").JobId;
        var mine = store.Save(id, 1, "a", "2", "mine");

        var theirs = store.Save(id, 1, "a", "3", "theirs");

        Assert.False(mine.Conflict);
        Assert.True(theirs.Conflict);
        Assert.Equal("2", theirs.Revision.Text);
        Assert.Equal("2", store.Current(id).Text);
        Assert.Equal(2, store.History(id).Count);
    }

    [Fact]
    public void Many_writers_at_once_lose_nothing_that_was_accepted()
    {
        var id = Open().Create("a", "0", "new").JobId;
        var accepted = 0;
        Parallel.For(0, 4, writer =>
        {
            var store = Open();
            for (var i = 0; i < 10; i++)
            {
                var seen = store.Current(id).Number;
                if (!store.Save(id, seen, "a", $"{writer}-{i}", "edit").Conflict)
                    Interlocked.Increment(ref accepted);
            }
        });

        Assert.Equal(accepted + 1, Open().History(id).Count);
        Assert.True(accepted >= 10);
    }

    [Fact]
    public void Undo_and_redo_walk_the_history_as_a_list_with_a_cursor_would()
    {
        // The reference is the textbook model of undo: a list of states and a cursor; an edit cuts the list after the cursor.
        Gen.Int[0, 3].Array[1, 30].Sample(steps =>
        {
            var store = Open();
            var id = store.Create("a", "start", "new").JobId;
            var states = new List<string> { "start" };
            var cursor = 0;
            for (var i = 0; i < steps.Length; i++)
            {
                var head = store.Current(id).Number;
                if (steps[i] <= 1)
                {
                    store.Save(id, head, "a", $"state {i}", "edit");
                    states.RemoveRange(cursor + 1, states.Count - cursor - 1);
                    states.Add($"state {i}");
                    cursor++;
                }
                else if (steps[i] == 2)
                {
                    store.Undo(id, head);
                    cursor = Math.Max(0, cursor - 1);
                }
                else
                {
                    store.Redo(id, head);
                    cursor = Math.Min(states.Count - 1, cursor + 1);
                }

                var now = store.Current(id);
                Assert.Equal(states[cursor], now.Text);
                Assert.Equal(cursor > 0, now.CanUndo);
                Assert.Equal(cursor < states.Count - 1, now.CanRedo);
            }
        }, iter: 25, threads: 1);
    }

    [Fact]
    public void An_edit_after_undo_keeps_the_states_left_behind_in_the_history()
    {
        var store = Open();
        var id = store.Create("a", "1", "new").JobId;
        store.Save(id, 1, "a", "2", "wider");
        store.Undo(id, 2);
        store.Save(id, 1, "a", "3", "taller");
        store.Label(id, 2, " before the client called ");

        var history = store.History(id);

        Assert.Equal(["taller", "wider", "new"], history.Select(h => h.Edit));
        Assert.Equal("before the client called", history[1].Label);
        Assert.Equal("2", store.Restore(id, 3, 2).Revision.Text);
        Assert.Equal("3", store.Undo(id, 4).Revision.Text);
    }

    [Fact]
    public void A_job_put_away_leaves_the_list_and_stays_on_record()
    {
        var store = Open();
        var id = store.Create("a", "1", "new").JobId;

        store.PutAway(id);

        Assert.Empty(store.Jobs());
        Assert.Equal("1", store.Current(id).Text);
    }

    [Fact]
    public void What_is_ticked_off_stays_so_for_every_reader_until_it_is_taken_back()
    {
        var id = Open().Create("a", "1", "new").JobId;

        Open().Floor.Tick(id, "piece:C1-L/a", "2000 × 300");
        Open().Floor.Tick(id, "piece:C1-L/a", "2000 × 310");
        Open().Floor.Tick(id, "piece:C1-R/a", "2000 × 300");
        Open().Floor.Untick(id, "piece:C1-R/a");
        Open().Floor.Untick(id, "piece:C9-L/a");

        var tick = Assert.Single(Open().Floor.Ticks(id));
        Assert.Equal(("piece:C1-L/a", "2000 × 310"), (tick.Item, tick.Was));
        Assert.Empty(Open().Floor.Ticks(Guid.CreateVersion7()));
    }

    [Fact]
    public void Many_hands_ticking_at_once_lose_no_tick()
    {
        var id = Open().Create("a", "1", "new").JobId;

        Parallel.For(0, 4, hand =>
        {
            for (var i = 0; i < 10; i++)
                Open().Floor.Tick(id, $"piece:{(hand + i) % 12}", "x");
        });

        Assert.Equal(12, Open().Floor.Ticks(id).Count);
    }

    [Fact]
    public void A_job_that_is_not_there_is_named()
    {
        var missing = Guid.CreateVersion7();
        var error = Assert.Throws<KeyNotFoundException>(() => Open().Current(missing));
        Assert.Contains(missing.ToString(), error.Message, StringComparison.Ordinal);
    }
}
