using System.Globalization;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>Drop-offs: owners, jobs, animals with their shares, tags, parts, holds, tickets and deposits.</summary>
internal sealed class AtTheDoor(Season season, OwnerDeck owners)
{
    private readonly Dice _dice = season.Dice;
    private int _tags = 10_000;

    /// <summary>Plans one drop-off.</summary>
    /// <param name="most">How many jobs it may make.</param>
    /// <returns>How many it makes.</returns>
    public int Expect(DateTime at, PriceList prices, int most)
    {
        var next = Delivery.Next(_dice);
        var delivery = next.Shares.Length <= most ? next : Delivery.OneDeer;
        season.Plan(at, "take in a job", StaffRole.Clerk, "Counter", () => TakeIn(delivery, prices));
        return delivery.Shares.Length;
    }

    private void TakeIn(Delivery delivery, PriceList prices)
    {
        var animals = Enumerable.Range(0, delivery.Animals).Select(_ => Animal(delivery.Stock)).ToList();
        var jobs = delivery.Shares.Select(share => StartJob(share, animals, prices)).ToList();
        foreach (var animal in animals)
        {
            foreach (var job in jobs)
            {
                animal.Animal.ShareWith(job.Job, job.Fraction, Share.PortionOf(job.Fraction));
                season.Add(animal.Animal.Shares.Last());
            }

            Weigh(animal);
            season.AddTicket(TicketKind.Carcass, animal.Animal.Id);
            KeepParts(animal.Animal);
        }

        InTheCooler.Expect(season, animals, jobs);
    }

    private AnimalInHand Animal(Stock stock)
    {
        var animal = new Animal(stock.Species, stock.State, season.Now);
        var isGame = stock.Species is Species.WhiteTailDeer or Species.Elk;
        var hasTag = !isGame || !_dice.In(1);
        var test = isGame && _dice.In(5) ? DiseaseTest.Pending : DiseaseTest.NotRequired;
        new TakenAnimal(stock.Species, stock.State)
        {
            Sex = _dice.In(55) ? Sex.Male : Sex.Female,
            Tag = hasTag ? TakeTag() : null,
            HarvestedOn = isGame ? DateOnly.FromDateTime(season.Now).AddDays(-_dice.Between(0, 2)) : null,
            Area = isGame ? $"Unit {_dice.Between(1, 60)}" : null,
            CattleAge = stock.Species == Species.Beef ? CattleAge.UnderThirtyMonths : null,
            Surface = _dice.In(60) ? Temperature.FromFahrenheit(_dice.Between(33, 40)) : null,
            DiseaseTest = test,
            SampleNumber = test == DiseaseTest.Pending ? $"S-{_tags}" : null,
        }.WriteOn(animal, DateOnly.FromDateTime(season.Now), season.Now, season.Hand.Id);
        season.Add(animal);
        foreach (var hold in animal.Holds)
            season.Add(hold, animal);
        return new AnimalInHand(animal, stock, Weight.FromPounds(_dice.Between(stock.Low * 2, stock.High * 2) / 2m));
    }

    public string TakeTag() => $"NF-{(++_tags).ToString(CultureInfo.InvariantCulture)}";

    private void Weigh(AnimalInHand animal) =>
        season.Add(WeighIn.OfAnimal(
            WeighInKind.Arrival, animal.Animal, animal.Arrival, new Reading("rail", season.Floor.Settings.RailDivision), season.Now, season.Hand.Id));

    private void KeepParts(Animal animal)
    {
        if (animal.Species != Species.WhiteTailDeer || !_dice.In(30))
            return;
        foreach (var kind in _dice.In(25) ? (PartKind[])[PartKind.Antlers, PartKind.Cape] : [_dice.Of([PartKind.Antlers, PartKind.Heart, PartKind.Hide])])
        {
            var part = animal.KeepPart(kind, null);
            season.Add(part, animal);
            season.AddTicket(TicketKind.Part, part.Id);
        }
    }

    private JobInHand StartJob(Ratio share, IReadOnlyList<AnimalInHand> animals, PriceList prices)
    {
        var (owner, isNew) = owners.Next();
        if (isNew)
            season.Add(owner);
        var job = new Job(season.TakeJobNumber(), owner, season.Now, season.Hand.Id, prices.Id);
        season.Add(job);
        season.AddTicket(TicketKind.Claim, job.Id);
        var inHand = new JobInHand(job, owner, prices, share, animals);
        if (_dice.In(15))
        {
            var person = new JobPerson(_dice.Of([PersonRole.Hunter, PersonRole.DroppedOff, PersonRole.Collector]), People.Name(_dice), null, null);
            season.Add(person, job);
        }

        if (_dice.In(80))
        {
            inHand.Paid = Money.FromDollars(50m);
            season.Add(new Payment(job, inHand.Paid, _dice.Of([PaymentMethod.Cash, PaymentMethod.Card]), isDeposit: true, null, season.Now, season.Hand.Id));
        }

        // "Ticket now, details after": every eighth order is written down only the next day.
        if (job.Number % 8 == 0)
            season.Plan(season.Now + _dice.Minutes(24 * 60, 36 * 60), "change an order", StaffRole.Clerk, "Counter", () => OrderBook.Write(season, inHand, isLater: true));
        else
            OrderBook.Write(season, inHand, isLater: false);
        return inHand;
    }
}
