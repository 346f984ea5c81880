using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Acts;

public sealed class JournalTests(ShopFile shop) : IClassFixture<ShopFile>
{
    [Fact]
    public void Every_act_is_one_entry_with_its_hand_station_moment_and_verb()
    {
        var before = Entries().Count;

        using (var records = shop.Open())
        {
            shop.VerbsOn(records).Run("take in a job", shop.Manager with { Station = "counter 2" }, null, act =>
            {
                Sample.Deer(records, Sample.Job(records, act), act);
                return Outcome.Done();
            });
        }

        var entry = Assert.Single(Entries().Skip(before));
        Assert.Equal("take in a job", entry.Verb);
        Assert.Equal("counter 2", entry.Station);
        Assert.Equal(shop.Manager.StaffId, entry.ById);
        Assert.Equal(shop.Now, entry.At);
    }

    [Fact]
    public void Figures_and_ids_stand_before_and_after_and_of_a_text_only_that_it_changed()
    {
        var id = shop.Do((records, act) =>
        {
            var lug = new Lug(900, Weight.FromPounds(2m), act.Now);
            records.Lugs.Add(lug);
            records.SaveChanges();
            return lug.Id;
        });

        shop.Do((records, act) =>
        {
            records.Lugs.Single(lug => lug.Id == id).CheckTare(Weight.FromPounds(3m), act.Now);
            return id;
        });

        var change = Assert.Single(Changes(Entries()[^1]), one => one.GetProperty("what").GetString() == "Lug");
        Assert.Equal(id.ToString(System.Globalization.CultureInfo.InvariantCulture), change.GetProperty("key").GetString());
        Assert.Equal("Modified", change.GetProperty("act").GetString());
        Assert.Equal(Weight.FromPounds(2m).Milligrams, change.GetProperty("before").GetProperty("TareMg").GetInt64());
        Assert.Equal(Weight.FromPounds(3m).Milligrams, change.GetProperty("after").GetProperty("TareMg").GetInt64());
        Assert.Equal(1, change.GetProperty("after").GetProperty("Version").GetInt32());
        Assert.False(change.GetProperty("after").TryGetProperty("Number", out _));
    }

    [Fact]
    public void A_new_row_is_written_with_the_id_the_file_gave_it_and_a_deleted_one_as_it_was()
    {
        var added = shop.Do((records, act) =>
        {
            var job = Sample.Job(records, act);
            job.OrderCuts([new CutOrderLine(1, "loin", "steak", "3/4 in", 4)]);
            records.SaveChanges();
            job.OrderCuts([]);
            return job;
        });

        var changes = Changes(Entries()[^1]);
        var job = Assert.Single(changes, one => one.GetProperty("what").GetString() == "Job" && one.GetProperty("act").GetString() == "Added");
        Assert.Equal(added.Id, job.GetProperty("after").GetProperty("Id").GetInt32());
        Assert.Equal(added.Number, job.GetProperty("after").GetProperty("Number").GetInt32());
        Assert.Equal(JsonValueKind.Null, job.GetProperty("after").GetProperty("PromisedFor").ValueKind);
        var gone = Assert.Single(changes, one => one.GetProperty("act").GetString() == "Deleted");
        Assert.Equal($"{added.Id}/1", gone.GetProperty("key").GetString());
        Assert.Equal(4, gone.GetProperty("before").GetProperty("PerPack").GetInt32());
        Assert.Equal("text", gone.GetProperty("before").GetProperty("Detail").GetString());
    }

    [Fact]
    public void No_personal_text_gets_into_the_journal()
    {
        string[] personal = ["Quillfeather", "5550177", "555-0177", "Hollow Lane", "quill@", "WT-7788", "left the gate open"];
        var ownerId = shop.Do((records, act) =>
        {
            var job = Sample.Job(records, act, "Tamsin Quillfeather");
            job.Owner.Describe("Tamsin Quillfeather", "555-0177", "9 Hollow Lane", "quill@mail.example");
            job.PutPeople([new JobPerson(PersonRole.Collector, "Rowan Quillfeather", "555-0177", null)]);
            job.Arrange(null, Pooling.Own, PackWrap.Vacuum, false, "left the gate open");
            Sample.Deer(records, job, act, "WT-7788").PutOnHold(HoldReason.Other, "left the gate open", act.Now, act.Hand.Id);
            return job.OwnerId;
        });
        shop.Do((records, _) =>
        {
            records.Owners.Single(owner => owner.Id == ownerId).Describe("T. Quillfeather", "555-0177", null, null);
            return ownerId;
        });

        Assert.NotEmpty(shop.Column("SELECT Name FROM Owners WHERE Name LIKE '%Quillfeather%'"));
        Assert.All(Entries(), entry => Assert.All(personal, text =>
            Assert.DoesNotContain(text, entry.Changes + entry.Verb, StringComparison.OrdinalIgnoreCase)));
    }

    [Fact]
    public void The_name_of_the_form_key_and_the_key_itself_stay_out()
    {
        using var records = shop.Open();
        shop.VerbsOn(records).Run("do it", shop.Manager, "a-secret-form-key", act =>
        {
            Sample.Job(records, act);
            return Outcome.Done();
        });

        Assert.DoesNotContain("a-secret-form-key", Entries()[^1].Changes, StringComparison.Ordinal);
    }

    private List<JournalEntry> Entries()
    {
        using var records = shop.Open();
        return [.. records.Journal.AsNoTracking().OrderBy(entry => entry.Id)];
    }

    private static List<JsonElement> Changes(JournalEntry entry) => [.. JsonDocument.Parse(entry.Changes).RootElement.EnumerateArray()];
}
