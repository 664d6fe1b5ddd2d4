namespace HortiCalc.Soil;

/// <summary>The lines of the FAO table: scientific name, first common name, and the four limits from the lowest to the highest as printed.</summary>
/// <remarks>As bytes of the assembly, about 50 kB: nothing is read until someone asks.</remarks>
internal static class FaoEcocropPhLines
{
    public static ReadOnlySpan<byte> Text => """
        Abelmoschus esculentus;abelmoskus;4.5 5.5 7 8.7
        Abelmoschus manihot;neka (Simbo);5 5.5 7 8
        Abelmoschus moschatus;abelmosk;5 5.5 7 8
        Abies amabilis;cascade fir;4.5 5 7 7.5
        Abies concolor;white fir;4 4.5 6.5 7
        Acacia abyssinica;;5 5.5 7 7.5
        Acacia ammobia;;4.5 5 6 6.5
        Acacia aneura;Mulga;4.5 5.5 7 7.5
        Acacia ataxacantha;;5.5 6 7 7.5
        Acacia aulacocarpa;;4 5 6 7
        Acacia brachystachya;;4.5 5.5 7 7.5
        Acacia caffra;common hook thorn;4.5 5 6 6.5
        Acacia catechu;black cutch;4.5 5 6 7
        Acacia coriacea;Witchety bush;6 6.5 7.5 8.5
        Acacia cowleana;Hall?s Creek wattle;4.5 5.5 7 8
        Acacia dudgeoni;;5 5.5 7 7.5
        Acacia farnesiana;Ellington curse;4.3 6.5 7 8
        Acacia glaucocarpa;;4.5 5.5 6.5 7.5
        Acacia harpophylla;;4.5 5.5 7.5 8.5
        Acacia holosericea;Strap wattle;4.5 5.5 7.5 8.5
        Acacia irrorata;;5 5.5 6.5 7
        Acacia julifera ssp. gilbertensis;;4.5 5 6 6.5
        Acacia julifera ssp. julifera;;4.5 5 6 6.5
        Acacia karroo;sweet thorn;4.5 6.5 8.5 9
        Acacia leptocarpa;;4 4.5 6 6.5
        Acacia leucophloea;Kuteera-Gum;5 6 7 7.5
        Acacia mearnsii;black wattle;4.5 5 6.5 7.5
        Acacia monticola;Red Wattle;5.5 6 7 7.5
        Acacia neriifolia;;4.5 5 6 6.5
        Acacia oraria;;4.5 5 6.5 7
        Acacia pendula;;6.5 7 8 8.5
        Acacia podalyriifolia;Mount Morgan Wattle;4.5 5 6 6.5
        Acacia pycnantha;Golden wattle;5 6 7 7.5
        Acacia senegal;gum arabic;4.5 5 7 8
        Acacia silvestris;;5 6 7 7.5
        Acacia simsii;;4.5 5 6 6.5
        Acacia stenophylla;River cooba;6.5 7 8 8.5
        Acacia tortilis;umbrella thorn;6 6.5 7.5 8.5
        Acacia torulosa;Torulosa Wattle;4.5 5 7.5 8
        Acacia tumida;Pindon wattle;6.5 7 8 8.5
        Acacia victoriae;Bramble wattle;5 6 7.5 8.5
        Acanthosicyos horridus;;5.5 6 7 7.5
        Acanthosicyos naudinianus;;5.5 6 6.5 7
        Acanthus mollis;acanthus;5.5 5 7 6.5
        Acca sellowiana;pineapple guava;4.5 5.5 7 8
        Achillea fragrantissima;lavender cotton;6.5 7 8 8.5
        Acokanthera schimperi;arrow-poison plant;5 5.5 6.5 7
        Acorus calamus;calamus;5 5.5 6.5 7.5
        Acrocomia aculeata;macauba palm;5 5.5 6.5 7.5
        Acrocomia totai;total;5 5.5 6.5 7
        Actinidia arguta;hardy kiwi;4.5 5 6.5 7
        Actinidia chinensis;Chinese gooseberry;5.5 6 7 7.5
        Adansonia digitata;African baobab;4.3 5 6.5 7.5
        Adansonia grandidieri;baobab;5 5.5 7 7.5
        Adansonia gregorii;;4.5 5 6.5 7.5
        Adenanthera pavonina;Acacia Coral;4.5 5 7 7.5
        Adonis vernalis;adonis;6.5 7 7.5 8
        Aegle marmelos;bael;5.3 6 7.5 8.5
        Aframomum corrorima;;4.5 5.5 6.5 7.5
        Aframomum melegueta;Guinea grains;4.5 5.5 6.5 7.5
        Afzelia africana;African mahogany;5 5.5 6.5 7
        Afzelia quanzensis;mahogany bean;4.5 5 7 7.5
        Agropyron repens;couch grass;4.2 6 6.5 8.2
        Agrostis stolonifera;Creeping bentgrass;4 5 6.5 8.2
        Agrostis tenuis;;4 4.5 7.5 8.5
        Ailanthus altissima;Ailanthus;4 5 7 8
        Ailanthus excelsa;;4.5 5 6 7
        Aiphanes aculeata;ruffle palm;4.5 5 6.5 7
        Albizia amara;arad;4.5 5 7 8
        Albizia lebbeck;lebbek tree;5.5 6 7 8.5
        Albizia lophantha;;6.5 7 7.5 8
        Albizia toona;red siris tree;5 5.5 6.5 7
        Alisma plantago-aquatica;common waterplantain;4.5 5 7 7.5
        Allium ampeloprasum;wild leek;4.5 6 6.5 7.5
        Allium cepa;onion;4.3 6 7 8.3
        Allium cepa var. aggregatum;potato onion;5.5 6 7 7.5
        Allium cepa var. cepa;Onions (bulb);4.3 6 7 8.3
        Allium chinense;rakkyo;4.3 5.5 6.5 7.2
        Allium fistulosum;branching onion;5.5 6.6 7.4 8.5
        Allium sativum;garlic;5 6 6.6 8.5
        Allium schoenoprasum;chives;5 6 6.6 8.2
        Allium tuberosum;Chinese chives;5.3 6 6.8 8.3
        Alnus maritima;seaside alder;6.1 6.5 7.5 8.1
        Alnus rubra;red alder;5 5.5 7 8
        Alocasia macrorrhizos;giant taro;5 5.7 6.3 7.3
        Aloe arborescens;candelabra aloe;4.2 5 6.5 7
        Aloe barbadensis;;6 6.5 7.5 8
        Aloe ferox;aloe;6 6.5 7 7.5
        Aloe perryi;;6 6.5 7 7.5
        Aloysia triphylla;Lemon Verbena;5 5.5 7 7.5
        Alphitonia excelsa;;4.5 5.5 7 8
        Alpinia galanga;galangal;5 5.5 6.5 6.8
        Alpinia officinarum;;4 4.5 5.5 6
        Alstonia scholaris;devil's tree;4.5 5.5 6.5 7.5
        Amaranthus caudatus;amaranths;4.3 5.5 7.5 8.5
        Amaranthus cruentus;whitespot;4.3 5.5 7 7.5
        Amaranthus dubius;;5.5 6 7.5 8.5
        Amaranthus hybridus;smooth pigweed;6 6.5 7.5 8.5
        Amaranthus hypochondriacus;prince's feather;5.5 6 7 7.5
        Amaranthus lividus;;4.3 5.5 7 7.5
        Amaranthus sp.;amaranth;4.3 5.5 7.5 8.5
        Amaranthus tricolor;;4.3 5.5 7.5 8
        Ambelania acida;guanaguanare;4.5 5 7 7.5
        Amelanchier pallida;pale serviceberry;5 5.5 6.5 7
        Ammandra natalia;;4.5 5.5 6.5 7
        Amorphophallus paeoniifolius;elephant foot yam;5 5.5 6.2 7.5
        Anacardium occidentale;mamuang himmaphan;3.8 4.5 6.5 8.7
        Ananas comosus;pineapple;3.5 4.5 8 9
        Anemone hepatica;hepatica;6 6.5 8 8.5
        Anethum graveolens;dill;5 6 7 8
        Angelica archangelica;angelica;4.5 5.5 6.5 7.3
        Angelica atropurpurea;great angelica;5.5 5 7.5 8
        Angophora costata;;5 5.5 6.5 7
        Annona atemoya;;5 5.5 6.5 7
        Annona cherimola;cherimoya;5.5 6 7.5 8
        Annona cherimola x Annona squamosa;atemoya;5 5.5 6.5 7
        Annona diversifolia;ilama;5.8 7 8 8.4
        Annona montana;mountain soursop;5 5.5 7 8.7
        Annona muricata;soursop;4.5 5.5 6.5 8
        Annona purpurea;Soncoya;5 5.5 6.5 7
        Annona reticulata;custard apple;4.5 5 7.5 8
        Annona scleroderma;poshte;4.5 5.5 6.5 7
        Annona senegalensis;wild custard apple;5 5.5 7 7.5
        Annona squamosa;sugar apple;4.3 7 8 8.5
        Anthemis nobilis;chamomile;5.5 6 7 8
        Anthocephalus macrophyllus;;5 5.5 6.5 7
        Anthocleista nobilis;;5 5.5 6.5 7
        Anthyllis vulneraria;common kidney vetch;5 6.5 7.5 8
        Antidesma bunius;bignay;5.5 6 7 8
        Apios americana;apios;4.5 5 7.5 8.5
        Apium graveolens;wild celery;5.5 6 6.8 7.5
        Apium graveolens var. dulce;celery;4.5 5.8 6.8 8.3
        Apium graveolens var. rapaceum;celeriac;5.3 6 6.8 8.3
        Apocynum cannabinum;hemp dogbane;4.5 5 7 8
        Aponogeton distachyos;Cape Water-hawthorn;4.5 6 7.5 8
        Aquilaria malaccensis;agalwood;6 6.5 7.5 8.5
        Aquilegia canadensis;Colorado columbine;5 5.5 8 8.5
        Aquilegia vulgaris;common columbine;6 6.5 8 8.5
        Arachis glabrata;;4.5 5 6 8.5
        Arachis hypogaea;groundnut;4.5 5.5 6.5 8.5
        Arachis pintoi;man? forrajero;4.5 5.4 6 7.5
        Araucaria angustifolia;;5 5.5 6.5 7.5
        Araucaria cunninghamii;hoop pine;4.5 5 6.5 7.5
        Araucaria hunsteinii;;5 5.5 6.5 7.5
        Archidendron jiringa;;4.5 5.5 6.5 7
        Archontophoenix cunningham;;5 5.5 6.5 7
        Arctium lappa;great burdock;6 6.5 8 8.5
        Areca catechu;betel nut palm;4.5 5.5 6 6.8
        Arenga pinnata;sugar palm;5 6 7 8
        Armoracia rusticana;horseradish;4.5 6 7 8.7
        Arnica montana;arnica;5 5.5 7 7.5
        Aronia alnifolia;saskatoon;5 5.5 7 7.5
        Arracacia xanthorrhiza;arracacha;4.5 5 6 6.5
        Artemisia abrotanum;southernwood;5 5.5 6 7.5
        Artemisia afra;ariti;5 5.5 6 7
        Artemisia annua;;5.5 6 8 8.5
        Artemisia dracunculus;tarragon;4.9 5.5 7 7.5
        Artocarpus altilis;breadfruit;4.3 5.5 6.5 8.7
        Artocarpus chaplasha;;4 5 6.5 7.5
        Artocarpus heterophyllus;jack fruit;4.3 5.5 7.5 8
        Artocarpus integer;chempedak;4 4.5 6 6.5
        Asclepias incarnata;swamp milkweed;4.5 5 7.5 8
        Asclepias lanceolata;fewflower milkweed;4.5 5 7 7.5
        Asclepias speciosa;showy milkweed;4.5 5 7.5 8
        Asclepias tuberosa;butterfly milkweed;4.5 5 7 7.5
        Asimina triloba;papaw;5.2 6 7.2 7.5
        Asparagus officinalis;asparagus;4.5 6 6.7 8.2
        Aster cordifolius var. cordifolius;common blue wood aster;5.5 5.7 7.5 8
        Astrocaryum vulgare;adquiere;4 5 7 8
        Atriplex hortensis;;5 6.5 7.5 8.2
        Attalea cohune;cohune palm;4.5 5 7 7.5
        Averrhoa bilimbi;blimbi;5 5.5 6.5 8.3
        Averrhoa carambola;five corner;5 5.5 6.5 8.5
        Avicennia germinans;mangrove;6 6.5 7 7.5
        Avicennia marina;mangrove;6 6.5 7 7.5
        Avicennia officinalis;mangrove;6 6.5 7 7.5
        Axonopus affinis;;4.3 4.8 5.6 7
        Axonopus compressus;;5 5.5 6 7
        Azadirachta indica;neem;5 5.5 7 7.5
        Azanza garckeana;snotappel;4.5 5 7 7.5
        Baccaurea motleyana;rambai;4.5 5 6 6.5
        Baccaurea racemosa;menteng;4.5 5 5.5 6
        Baccaurea ramiflora;lutqua;4.5 5 6 6.5
        Bactris gasipaes;peach palm;4 5 6.5 7.5
        Baikiaea plurijuga;Mukushi;4.5 5 5.5 6.5
        Balanites aegyptiaca;desert date;6.5 7 8 8.5
        Bambusa arundinacea;thorny bamboo;4 4.5 6.5 7
        Bambusa blumeana;bamboo;4.5 5 6.5 7
        Banksia integrifolia;;4.5 5 6.5 7
        Baphia nitida;barwood;4.5 5 5.5 7
        Barringtonia racemosa;poeierkwasboom;5 5.5 7 7.5
        Basella alba;Malabar spinach;4.3 5.5 7 7.5
        Basella rubra;Malabar spinach;4.3 5.5 7 7.5
        Bassia latifolia;;5 6 7 7.5
        Bauhinia esculenta;;5 6 7 7.4
        Bauhinia rufescens;;5 5.5 7.5 8
        Bauhinia variegata;orchid tree;5 5.5 7 7.5
        Benincasa hispida;wax gourd;5 5.6 6.8 7.5
        Berchemia discolor;;4.5 5 7 7.5
        Bertholletia excelsa;Brazil nut;4.5 5.5 7 8
        Beta vulgaris;Silver beet;5.5 6 7 7.5
        Beta vulgaris var. cicla;Silver beet;5.5 6 6.5 8.3
        Beta vulgaris var. crassa;;5 6 6.8 8.3
        Beta vulgaris var. flavescens;;5.5 6 7 7.5
        Beta vulgaris var. saccharifera;sugarbeet;5.5 6 6.8 8.5
        Betula pubescens;downy birch;4 4.5 7.5 8
        Bidens pilosa;beggar's tick;3.5 4.5 8 8.5
        Bixa orellana;annatto;4.5 5.5 7.5 8.5
        Blighia sapida;akee;4.3 5.5 6.5 8
        Boesenbergia rotunda;ka-aen;5.5 6 7 7.5
        Bolusanthus speciosus;tree wistaria;6 6.5 8 8.5
        Borago officinalis;borage;6 6.5 7.5 8.3
        Borassus aethiopum;borasusspalm;5 5.5 7 7.5
        Borojoa patinoi;Boroj?;4 4.5 6.5 7
        Boswellia serrata;luban;5 5.5 6.5 7.4
        Bougainvillea glabra;trinitaria;5.5 6 7 7.5
        Brachiaria brizantha;bread grass;4.5 5 6 7
        Brachychiton acerifolius;;5.5 6 7 7.5
        Brachylaena huillensis;silver oak;4.5 5 7 7.5
        Brachystegia spiciformis;bean-pod tree;5 5.5 7 7.5
        Brassica carinata;Abyssinian mustard;5 5.5 8 8.5
        Brassica chinensis;Chinese cabbage;5.3 6 7.5 8
        Brassica juncea;Indian mustard;5 5.5 6.5 8
        Brassica napus;rape;5.5 6.5 7.6 8
        Brassica napus var. napobrassica;swede;4.8 5.5 7 7.8
        Brassica oleracea var. acephala;thousand head kale;4.5 5.4 6 8.3
        Brassica oleracea var. botrytis;cauliflower;5.5 6 7 8.5
        Brassica oleracea var. capitata;cabbage;5 6 7.5 8.3
        Brassica oleracea var. gemmifera;Brussels sprouts;4.5 6 7 7.8
        Brassica oleracea var. gongyloides;Kohlrabi;5.5 6 6.5 8.5
        Brassica oleracea var. italica;broccoli;5.5 6 6.8 8.5
        Brassica rapa Gaisin gr.;;5 5.5 6.5 7
        Brassica rapa Pak Choi;Pak Choi;5 5.5 7 7.5
        Brassica rapa var. rapifera;;4.3 6 6.8 7.5
        Bridelia micrantha;mitserie;4.5 5 7 7.5
        Broussonetia papyrifera;paper mulberry;4.5 5 7.5 8
        Bruguiera gymnorrhiza;orange mangrove;6.5 7 8 8.5
        Buchanania latifolia;;4.9 5.5 6 7.2
        Burkea africana;wild seringa;4.5 5 7 7.5
        Bursera simaruba;;4.5 5 6.5 7
        Butea monosperma;flame-of-the-forest;5.5 6 7 7.5
        Butomus umbellatus;flowering rush;4.5 5 8 8.5
        Butyrospermum paradoxum ssp. parkii;;5.5 6 7 8
        Buxus sempervirens;box;6.5 7 8 8.5
        Caesalpinia coriaria;divi-divi;4.5 6.5 7.5 8.7
        Cajanus cajan;congo pea;4.5 5 7 8.4
        Calamus erinaceus;;6.5 6.8 7.2 7.5
        Calamus peregrinus;;3.6 4 4.5 5
        Calathea allouia;Guinea arrowroot;5.5 6 7 7.5
        Calendula officinalis;pot marigold;4.5 5.5 7 8.3
        Calliandra calothyrsus;;4.5 5 6 7.5
        Callitris endlicheri;black cyprus pine;5 5.5 6.5 7
        Callitris preissii ssp. preissii;;4.5 5 6.5 7
        Calluna vulgaris;heather;4.5 5 6.5 7
        Calodendrum capense;Cape chestnut;5 5.5 7 7.5
        Calophyllum brasiliense;;4.5 5 7 7.5
        Calophyllum inophyllum;Alexandria laurel;5 5.5 7 8
        Calotropis procera;apple of Sodom;5 5.5 7 7.5
        Caltha palustris;marsh marigold;4.8 5.5 6.5 7.3
        Camellia sinensis;tea;4 4.5 5.5 6
        Campanula rapunculus;;6 6.5 7 7.5
        Cananga odorata;ylang ylang;4.5 5 6.5 8
        Canarium indicum;ngali nut;5.5 6 7.5 8.1
        Canarium ovatum;pilinut;4.5 5 6 6.5
        Canavalia brasiliensis;;4.3 5 7 8
        Canavalia ensiformis;jack bean;4.3 5 6 8
        Canavalia gladiata;Sword bean;4.3 5 6 7.5
        Canna edulis;achira;4.5 5.5 6.5 8
        Canna indica;canna lily;5 5.5 7.5 8
        Capparis decidua;Injet (Amargna);6.5 7 7.5 8.5
        Capparis spinosa;caper;6 6.5 7.5 8.3
        Capparis tomentosa;gomor;6 6.5 8 8.5
        Capsicum annuum;sweet pepper;4.5 5.5 6.8 7
        Capsicum baccatum var. pendulum;;5.3 6 6.5 7.8
        Capsicum chinense;;5.3 6 6.5 7
        Capsicum frutescens;cayenne pepper;4.3 5.5 6.8 8.3
        Capsicum pubescens;;5.5 6 6.5 7.3
        Caragana arborescens;Siberian peashrub;6 6.5 8.5 9
        Carapa guianensis;Brazilian mahogany;5 5.5 7 7.5
        Carica papaya;papaya;4.5 5.5 7 8
        Carica pubescens;mountain papaw;4.5 6 7 8.4
        Carissa carandas;;6 6.5 8 8.5
        Carissa edulis;akamba (Bena);6 6.5 7.5 8
        Carissa macrocarpa;large num-num;5 5.5 6.5 8
        Carpinus betulus;European hornbeam;4 5 7 8
        Carthamus tinctorius;safflower;5 6.5 7.5 8
        Carum carvi;caraway;4.8 6 7 7.8
        Carya illinoensis;Pecan;5 5.5 7 7.5
        Caryocar nuciferum;;5.5 6 6.5 7
        Caryodendron orinocense;barinas nut;4.5 5 6 6.5
        Caryota urens;;5.5 6 7.5 8
        Casimiroa edulis;casimiroa;6.5 7 7.5 8
        Cassia alata;candle bush;4.3 5.5 6.5 8
        Cassia angustifolia;senna;6.5 7 8.2 8.5
        Cassia auriculata;;5 6 7 8
        Cassia fistula;golden shower;5.5 6 7 7.8
        Cassia occidentalis;coffee senna;4.5 6 7 8.4
        Cassia siamea;kassod tree;5 5.5 6.5 7.5
        Cassia tomentosa;;5 5.5 6.5 7
        Castanea crenata;Japanese chestnut;5 5.5 6 7
        Castanea dentata;American chestnut;5.5 6 7 7.5
        Castanea mollissima;Chinese chestnut;5 5.5 6.5 7.5
        Castanea pumila;chinquapin;5 5.5 6 7
        Castanea sativa;chestnut;4 5 6 7
        Casuarina cristata;;6 6.5 8 8.5
        Casuarina cunninghamiana;beef wood;4.5 5.5 6.5 7.5
        Casuarina decaisneana;;5 5.5 6.5 7.5
        Casuarina equisetifolia;she oak;4 5 6.5 8.5
        Casuarina glauca;;4 4.5 7 8
        Casuarina junghuhniana;;2.8 4.5 7 8
        Casuarina littoralis;;4.5 5.5 7.5 8
        Catha edulis;bushman's tea;6 6.5 7.5 8
        Catharanthus roseus;periwinkle;5.5 6 7 7.5
        Cedrela odorata;West Indian cedar;5.5 6 7 8
        Cedrus deodara;Deodar cedar;5 5.5 6.5 7.5
        Ceiba pentandra;kapok;5 5.5 6.5 7.5
        Celosia argentea;Celosia;5.5 6 6.5 7.5
        Cephaelis ipecacuanha;ipecac;4.5 5 6 6.5
        Ceratonia siliqua;carob tree;5 6 7.5 9
        Ceratopetalum apetalum;;4 4.5 6 6.5
        Ceriops tagal;mangrove;6.5 6.8 7.2 7.5
        Chamaecrista nictitans;;4.5 5 6.5 7
        Chamaedorea sp.;;4.5 5 6 6.5
        Chamaedorea tepejilote;pacaya palm;6 6.5 7.5 8
        Chamaerops humilis;;6 6.5 7.5 8
        Chenopodium album;lamb's-quarters;4.2 6 7 8.2
        Chenopodium album ssp. album;goosefoot;4.2 6 7 8.2
        Chenopodium pallidicaule;canihua;4.8 6 7.5 8.5
        Chenopodium quinoa;quinoa;4.5 5.5 8 9.5
        Chlorogalum pomeridianum;amole;6 6.5 7.5 8
        Chlorophora excelsa;iroko tree;4.5 5 6.5 7.5
        Chlorophytum comosum;green hen and chickens;4.5 5 7 7.5
        Chrysanthemum coronarium var. coronarium;;5.3 6 6.5 7.3
        Chrysanthemum leucanthemum;ox eye daisy;5 5.2 7 7.5
        Chrysophyllum albidum;star apple;4.5 5 6.5 7
        Chrysophyllum cainito;caimito;4.4 5 5.5 7.5
        Chukrasia velutina;;5 5.5 6.5 7
        Cicer arietinum;chickpea;4.7 6 8.5 9.5
        Cichorium endivia;endive;5.3 6.5 7.8 8.5
        Cichorium intybus;chicory;4.5 6 7.5 8.3
        Cinchona calisaya;;4.5 5 6 6.5
        Cinchona officinalis;;4.8 5.5 6.3 7
        Cinchona pubescens;quinine tree;4.5 5 6 6.5
        Cinnamomum burmannii;;5 5.5 6 7
        Cinnamomum camphora;camphor tree;4.3 5.5 7 8
        Cinnamomum cassia;cassia;4.5 5 5.5 7
        Cinnamomum loureirii;;4.5 5 6.4 8
        Cinnamomum verum;cinnamon;5 5.5 6.5 7
        Citrofortunella x microcarpa;calamondin;5.5 6 6.5 7
        Citrullus colocynthis;colocynth;4 4.5 7.5 8
        Citrullus lanatus;watermelon;5.5 6 7 7.5
        Citrus aurantifolia;Key lime;4.8 6 6.5 8.3
        Citrus aurantium;sour orange;5.5 6 7 8.3
        Citrus aurantium ssp. bergamia;bergamot orange;6 5 6.5 8
        Citrus deliciosa;;5 5.5 6.2 7
        Citrus grandis;pomelo;4.5 5.5 7 8
        Citrus latifolia;Tahiti lime;5 5.5 6.5 7.5
        Citrus limon;lemon;5.5 6.5 7 8
        Citrus madurensis;calamondin;5 5.5 7 7.5
        Citrus medica;citron;5.5 6.5 7 8
        Citrus paradisi;grapefruit;6 6.5 7.3 8.3
        Citrus reticulata;mandarin;5.5 6 6.8 8.3
        Citrus sinensis;orange;4 5 6 8.3
        Citrus sp.;citrus;4 5 6.5 8
        Citrus unshiu;Satsuma mandarin;5 5.5 6.5 8
        Clausena lansium;wampee;4.5 5 6 6.5
        Clitoria ternatea;blue clitoria;4.5 6.5 7.5 9
        Cnicus benedictus;blessed thistle;5.5 6 7 7.5
        Cnidoscolus chayamansa;chaya;4.5 5.5 6.5 7.5
        Coccoloba uvifera;Sea grape;5.8 6.5 7.5 8
        Cochlospermum religiosum;;5 5.5 6.5 8
        Cocos nucifera;coconut;4.3 5 8 8.7
        Coffea arabica;coffee arabica;4.3 5.5 7 8.4
        Coffea canephora;coffee;4 5 6.3 8
        Coffea excelsa;;4 4.5 6.5 7.5
        Coffea liberica;Liberian coffee;4.3 5.3 6.2 8
        Cola acuminata;abata kola;4.3 5 6 6.8
        Cola nitida;;4.3 5 6 7
        Colchicum autumnale;meadow saffron;4.5 5.5 6.5 7.5
        Coleus amboinicus;;5 6 6.5 7
        Coleus parviflorus;;5 6 6.5 7
        Colocasia esculenta;taro;4.3 5.5 6.5 8.2
        Colocasia esculenta var. antiquorum;;4.5 5.5 6.5 8
        Colophospermum mopane;mopane;5 5.5 7.5 8.5
        Combretum aculeatum;eddi shebai;5.5 6 7 7.5
        Combretum micranthum;;5.5 6 7 7.5
        Commiphora africana;bdellium;5.5 6 7.5 8
        Conocarpus erectus;buttonwood;5 5 7 7.5
        Cordeauxia edulis;yeheb nut;6 6.5 7.5 8.4
        Cordia africana;wanza;4.5 5 6 7
        Cordia alliodora;Ecuador laurel;6 6.5 7.5 8.5
        Coriandrum sativum;coriander;4 5.5 7.5 8
        Cornus canadensis;Canadian dwarf cornel;3.9 5.5 7.5 7.7
        Cornus mas;cornelian cherry;6 6.5 8 8.5
        Cornus sanguinea;common dogwood;6 6.5 8 8.5
        Corylus avellana;hazel nut;5.5 6 6.5 7.5
        Corylus colurna var. colurna;;6 6.5 7.3 8
        Corylus maxima;;5.5 6 6.5 7.5
        Coula edulis;African walnut;4.5 5 6.5 7
        Couma utilis;sorva;4 4.5 6 6.5
        Crambe cordifolia;crambe;6 6.5 8 8.5
        Crambe maritima;sea kale;6 6.5 7.5 8
        Crocus sativus;saffron;5.5 6 7 7.8
        Crotalaria juncea;sunn hemp;5 6 7 8.4
        Crotalaria pallida;rattlepod;4.5 5.5 6.5 7.1
        Cryptomeria japonica;Japanese temple cedar;4.5 5 6.5 7.5
        Cryptotaenia japonica;mitsuba;4.5 5 7.5 8
        Cucumis anguria;gherkin;5.5 6 7.5 8.3
        Cucumis melo;rock melon;5 6 7.5 8.7
        Cucumis sativus;cucumber;4.5 6 7.5 8.7
        Cucurbita ficifolia;fig-leaved gourd;5.3 6.4 7.5 8.3
        Cucurbita maxima;pumpkin;5 5.5 7.5 8.5
        Cucurbita mixta;squash;5 5.5 6.8 7.5
        Cucurbita moschata;pumpkin;4.5 5.5 7.5 8.3
        Cucurbita pepo;marrow;4.5 5.5 6.8 8.3
        Cullenia rosayroana;;4.5 5 6 7
        Cuminum cyminum;cumin;4.5 5 6.5 8.3
        Cupressus lusitanica;Portuguese cedar;5 5.5 6.5 7.5
        Cupressus macrocarpa;Monterey cypress;4.5 5.5 7 8.5
        Curcuma longa;turmeric;5.5 6 7 7.5
        Curcuma zedoaria;;5 5.5 6.5 7.5
        Cyamopsis tetragonoloba;guar bean;5.5 7.5 8 8.5
        Cydonia oblonga;quince;5.5 6 6.5 7
        Cymbopogon citratus;West Indian lemon grass;4.3 5 5.8 7.3
        Cynara cardunculus;cardoon;5 5.5 7 7.5
        Cynara scolymus;globe artichoke;5.5 6 6.5 8.3
        Cynodon dactylon;couch grass;4.3 5.5 7 8.4
        Cynometra cauliflora;namnam;4.5 5 6 6.5
        Cyperus esculentus;tiger nut;4.5 5 7 7.5
        Cyperus longus;galingale;5 5.5 7.5 8
        Cyperus rotundus;purple nut grass;3.5 5.5 7 8
        Cyphomandra betacea;tree tomato;5.8 6.3 7 7.5
        Cytisus proliferus;;4 5 7 8.5
        Dacryodes edulis;African plum;4 5 6.5 8
        Dactylis glomerata;cocksfoot;4.5 6 6.5 7.5
        Dalbergia melanoxylon;African blackwood;5 5.5 7 7.5
        Datura stramonium;thornapple;6 6.5 8 8.5
        Daucus carota;wild carrot;4.2 5.8 6.8 8.7
        Delonix regia;Royal poinciana;4.5 5.5 6.5 7.5
        Dendrocalamus asper;;4.5 5 6.5 7
        Dendrocalamus giganteus;;4.5 5.5 6.5 7.5
        Dendrocalamus hamiltonii;;4.5 5 6 6.5
        Dendrocalamus longispathus;;4.5 5 6 7
        Dendrocalamus merrillianus;;4.5 5 6.5 7
        Dendrocalamus strictus;male bamboo;4 4.5 5.5 6.5
        Derris indica;Pongame oil tree;5.5 6 7 7.5
        Desmanthus bicornutus;;6.5 7 8 8.5
        Dialium guineense;black velevet;5 5.5 7 7.5
        Dichrostachys cinerea;;4.5 5 8 8.5
        Didymopanax morototoni;match-wood;4.5 5 7 7.5
        Digitalis lanata;Grecian foxglove;6 6.5 7.5 8
        Digitalis purpurea;common foxglove;4.5 5.5 6.5 8.3
        Digitaria didactyla;;5 5.5 7 8
        Dimocarpus longan var. longan;longan;5 5.5 6 8
        Dimocarpus longan var. malesianus;green longan;4.5 5 6 6.5
        Dioscorea alata;cultivated yam;4.8 5.5 6.5 8.5
        Dioscorea bulbifera;potato yam;5.3 6 6.7 8
        Dioscorea cayenensis;;5.3 6 6.7 8
        Dioscorea composita;barbasco;5.8 6 6.5 7.3
        Dioscorea dumetorum;African bitter yam;4.8 5.5 6.5 8.5
        Dioscorea esculenta;fancy yam;4.5 5.5 6.5 8.5
        Dioscorea floribunda;yam;5.8 6 6.5 7.2
        Dioscorea opposita;;5.3 6 6.7 8.5
        Dioscorea rotundata;white yam;5.8 6.4 6.7 8.5
        Dioscorea trifida;cush-cush;5.3 6 6.7 8
        Diospyros digyna;black sapote;5.5 6 7 7.5
        Diospyros kaki;kaki;5 5.5 6.5 8.3
        Diospyros malabarica;;5 6 7 7.5
        Diospyros melanoxylon;;5 5.5 7 7.5
        Diospyros mespiliformis;African ebony;5 5.5 6.5 7
        Diospyros virginiana;kaki;5.8 6.5 7 8
        Dipterocarpus alatus;gurjum tree;4.5 5 6.5 7
        Dipterocarpus costatus;dau;4.5 5 6 6.5
        Dobera glabra;karsatta (Konsogna);5.5 6 8 8.5
        Dodonaea viscosa;wase;4.5 5.5 7.5 8.5
        Dodonaea viscosa ssp. angustifolia;;5.5 6.5 7.5 8.5
        Donaldsonia stenopetala;halleko;5 6 8 9
        Dovyalis caffra;Kei apple;5 5.5 6.5 7
        Dovyalis hebecarpa;;5.8 6.5 7.5 8
        Drosera rotundifolia;sundew;4.5 5 6.5 7
        Duboisia myoporoides;ngmoo;4.5 5 6.5 7
        Durio zibethinus;durian;4.3 5 6.5 7.5
        Dysoxylum fraseranum;;4.5 5 7 7.5
        Echinacea purpurea;purple coneflower;5.5 6.5 7.5 8
        Echinochloa crus-galli;barnyard grass;4.8 6 7 8.2
        Eichhornia crassipes;water hyacinth;5 6.7 7.3 8
        Ekebergia capensis;Cape ash;5 5.5 7 7.5
        Elettaria cardamomum;cardamom;4.8 5.5 6 7
        Eleusine indica;goose foot;4.3 5.5 6.5 8.4
        Elymus glaucus;blue wildrye;5.5 6 7 7.5
        Emblica officinalis;amla;5 6 8 8.5
        Emilia sonchifolia;red tasselflower;4 4.5 6.5 7
        Ensete ventricosum;enset;5 5.6 7.3 7.5
        Entada abyssinica;;4.5 5 7 7.5
        Enterolobium cyclocarpum;;4 4.5 8 8.5
        Eragrostis lehmanniana;Lehmann's love grass;6 7 8.5 9
        Eragrostis trichodes;;5.5 6 6.5 7
        Eremochloa ophiuroides;;4.5 5 6 7
        Eriobotrya japonica;loquat;4.5 5.5 6.5 8
        Eruca sativa;rocket;6 7 8 8.5
        Erythrina abyssinica;Red-hot poker tree;3.5 4 5.5 6.5
        Erythrina caffra;coast coral tree;5 5.5 7 7.5
        Erythrina edulis;basul;4.5 5.5 7 8
        Erythrina fusca;coral bean;4 4.5 6.5 7
        Erythrina variegata;coral tree;4.5 5 7 7.5
        Erythrina vespertilio;;4.5 5.5 7 8
        Erythroxylum coca;coca leaf;4.3 5.5 6.5 8
        Eucalyptus calophylla;marri-kino tree;5 5.5 6.5 7
        Eucalyptus camaldulensis;red river gum (Southern Provenances);4.5 5 7 8
        Eucalyptus citriodora;kafur limuni;5 5.5 6.5 7.5
        Eucalyptus deglupta;Mindanao gum;4.5 5.5 7.5 8
        Eucalyptus fraxinoides;;4.5 5 6.5 7
        Eucalyptus globoidea;white stringybark;5 5.5 6.5 7
        Eucalyptus globulus;Tasmania blue gum;5 5.5 6.5 7.5
        Eucalyptus globulus ssp. globulus;kaliptis;5 5.5 6.5 7.5
        Eucalyptus globulus ssp. maidenii;;4.5 5.5 6.5 7.5
        Eucalyptus gomphocephala;;6 6.5 7.5 9
        Eucalyptus grandis;rose gum;5 5.5 6.5 7.5
        Eucalyptus occidentalis;;6 6.5 7.5 8.5
        Eucalyptus phoenicea;;5 5.5 6.5 7
        Eucalyptus piperita;Sydney peppermint;5 5.5 6.5 7
        Eucalyptus punctata;grey gum;5 5.5 6.5 7
        Eucalyptus robusta;swamp mahogany;5.5 6 6.5 7.5
        Eucalyptus rubida;candlebark;5 5.5 6.5 7
        Eucalyptus saligna;Sydney blue gum;5 5.5 6.5 7.5
        Eucalyptus wandoo;;5 5.5 7 7.5
        Eugenia aromatica;cloves;4.5 5 6 7
        Eugenia dombeyi;Brazil eugenia;4.5 5.5 6.5 7.5
        Eugenia jambos;roseapple;5 5.5 7 8
        Eugenia stipitata;araz?;4.5 5 6 6.5
        Eugenia suborbiculare;;4.5 5 6 6.5
        Eugenia uniflora;Brazil cherry;4 6 7.5 8.5
        Eugenia uvalha;;5 6 7 8
        Euonymus japonicus;Japanese burning-bush;4.5 5 6 6.5
        Eurycoma longifolia;cha nang;4 4.5 5.5 6
        Eusideroxylon zwageri;ulin ironwood;4.5 5 6 6.5
        Euterpe chaunostachys;;4.5 5 6 7
        Euterpe edulis;palmiteiro;4.1 4.5 5 5.6
        Euterpe oleracea;euterpe palm;4.5 5 5.5 6.5
        Fagopyrum esculentum;buckwheat;4.4 5 6.5 7.5
        Fagraea fragrans;;4.5 5 6 6.5
        Fagus grandifolia;American beech;4.1 4.5 6 7
        Fagus sylvatica;beech;4 5 7 8.2
        Fagus sylvatica ssp. sylvatica;;4 5 7 8.2
        Faidherbia albida;winter thorn;5 5.5 7 7.5
        Faurea saligna;beechwood;5 5.5 7 7.5
        Feijoa sellowiana;feijoa;5 5.5 7 8.3
        Festuca arundinacea;tall fescue;4 5.5 8 9.5
        Festuca longifolia;;5.5 6 7 7.5
        Festuca rubra var. commutata;chewing's fescue;4.5 5.5 6.5 7.5
        Festuca rubra var. rubra;;4.5 5.5 6.5 8.3
        Fibraurea tinctoria;;6 6.5 8 9
        Ficus abutilifolia;large-leaved rock fig;5.5 6 6.5 7
        Ficus auriculata;;5 5.5 6.5 7
        Ficus carica;common fig;4.3 6 7 8.6
        Ficus elastica;Indian rubber tree;5 5.5 7.5 8.3
        Ficus glumosa;Afrikaans rostvy;5 5.5 7 7.5
        Ficus macrophylla;Moreton Bay fig;4.5 5 6 6.5
        Ficus sycomorus;pharaoh's fig;5 5.5 7 7.5
        Ficus thonningii;Indian laurel fig;4.5 5 7 7.5
        Ficus vogelii;Abbo rubber tree;4 4.5 5 5.5
        Flacourtia indica;Governor's plum;5 5.5 6.5 8
        Flemingia macrophylla;;4 5 7 8
        Foeniculum vulgare;fennel;4.8 6.5 7.5 8.2
        Fortunella hindsii;dwarf kumquat;6 6.5 7.5 8
        Fortunella japonica;round kumquat;6 6.5 7.5 8
        Fortunella margarita;oval kumquat;6 6.5 7.5 8
        Fragaria chiloensis;Chilean strawberry;5 5.5 6.5 7.3
        Fragaria vesca;wild strawberry;4.5 5 6 6.5
        Fragaria virginiana;Virginia strawberry;5 5.5 7 7.5
        Fragaria x ananassa;strawberry;4.5 6 6.8 8.2
        Frangula alnus;buckthorn;4.5 5 6 7
        Fraxinus excelsior;ash;6 6.5 8 8.5
        Frithia humilis;fairy elephant's foot;4.5 5 6 6.5
        Furcraea gigantea var. willemettiana;;5.5 6 7 8
        Garcinia dulcis;gourka;6.5 7 7.5 8
        Garcinia mangostana;mangosteen;4.3 5 6 7.5
        Garcinia multiflora;;6.5 7 7.5 8
        Garcinia xanthochymus;;5.5 6 7.5 8
        Garuga pinnata;ghogar tree;5.5 6 7 8
        Gelidiella acerosa;intip-intip;6.5 7 8.5 9.2
        Genipa americana;genipap;5 5.5 7 8
        Genista tinctoria;dyer's-greenweed;4.5 5.5 6.5 7.5
        Girardinia diversifolia;;6 6.5 7.5 8
        Gleditsia triacanthos;honey-locust;4.5 5.5 8 9
        Gliricidia sepium;gliricidia;4.5 5.5 6.2 8
        Glycine max;soya bean;4.5 5.5 6.5 8.4
        Glycyrrhiza glabra;liquorice;5.5 6.5 7.5 8.2
        Glycyrrhiza lepidota;;5.5 6 7.5 8.5
        Gmelina arborea;yemane;4 5 6 7.5
        Gossypium barbadense;cotton;5 5.2 7.2 8.5
        Gossypium herbaceum;cotton root;5.3 6 7.2 8.5
        Gracilaria tenuistipitata;;6 6.5 7.5 8
        Gracilaria verrucosa;;7 7.5 8 8.5
        Grevillea robusta;silky oak;4.5 5 7 7.5
        Grewia asiatica;phalsa;5.5 6 7.5 8
        Grewia bicolor;;5 5.5 7 7.5
        Grewia tiliifolia;;5.5 6 6.5 7
        Guaiacum officinale;gayak;4.5 5 7.5 8
        Guaiacum sanctum;;4.5 5 7.5 8
        Guazuma ulmifolia;;5.5 6 7 7.5
        Guizotia abyssinica;niger;5 5.5 6.5 7.5
        Gunnera tinctoria;gunnera;5 5.5 7 7.5
        Gynandropsis gynandra;spider flower;5 5.5 7 7.5
        Hagenia abyssinica;kosso;5.5 6 7.5 8.5
        Harungana madagascariensis;;5 5.5 6.5 7.5
        Hedysarum coronarium;sulla;4.5 6 7 8.5
        Helianthus annuus;sunflower;5.5 6 7.5 8
        Helianthus tuberosus;Jerusalem artichoke;4.5 6 6.6 8.3
        Heritiera littoralis;one one;5 5.5 6.5 7
        Hevea brasiliensis;rubber;3.5 4.5 6 8
        Hibiscus sabdariffa;roselle;4.5 5.5 7.5 8.5
        Hibiscus sabdariffa var. sabdariffa;roselle;4.5 5.5 7 8.5
        Hibiscus syriacus;rose-of-Sharon;5 5.5 7.5 8
        Hippophae rhamnoides;sea buckthorn;6 6.5 7.5 8
        Hippophae salicifolia;;6 6.5 7.5 8
        Hordeum vulgare;barley;6 6.5 7.5 8
        Humulus lupulus;hop;5 5.5 6.5 8
        Hydnocarpus kurzii;;4 4.5 5 5.5
        Hylocereus undatus;pitahaya;5 5.3 6.7 7.5
        Hymenaea courbaril;jatob?;4.5 4.8 6.8 7.5
        Hyphaene compressa;doum palm;5.5 6 7 7.5
        Hyphaene thebaica;dom (Sudan);6 6.5 7.5 8.5
        Hyssopus officinalis;hyssop;5.5 6 7.5 8.5
        Ilex paraguariensis;erva-mate;5.8 6.5 7 8
        Indigofera arrecta;Java indigo;4.5 5 6 6.5
        Indigofera hirsuta;hairy indigo;4.5 5.5 6.5 8
        Inga edulis;food inga;4.5 5 6.5 8
        Inga feuillei;pacay;4 5 6.5 8
        Inga vera;guaba;5.5 6 8 8.5
        Intsia bijuga;u'ula;5 5.5 6.5 7
        Ipomoea aquatica;water spinach;4.3 5 7 7.5
        Ipomoea aquatica var. reptans;kang kong;4.3 5 7 7.5
        Irvingia gabonensis;bush mango;4.5 5 7 7.5
        Jacaranda mimosifolia;jacaranda;6 6.5 7.5 8.5
        Jatropha curcas;physic nut;5 5.5 7.5 8
        Jessenia bataua;bataua;4.3 4.8 5.5 6.5
        Juglans hindsii;;5.8 6.5 7.5 8.3
        Juglans nigra;;5.8 6.5 7.5 8.3
        Juglans regia;walnut;4.5 5.5 6.5 8.3
        Juglans sieboldiana;;5.5 6.5 7 8.3
        Juniperus procera;African pencil cedar;6 6.5 7.5 8.5
        Justicia adhatoda;;5.5 6.5 7.5 7.8
        Kerstingiella geocarpa;Kersting's groundnut;6 7 7.5 8
        Khaya anthotheca;Nyasaland mahogany;4.5 5 7 7.5
        Khaya senegalensis;African mahogany;4.5 5 6 7.5
        Koeleria cristata;;6.5 7 8 8.5
        Lablab purpureus;hyacinth bean;4.5 5 7.5 8
        Lactuca indica;;4.5 5 6 6.5
        Lactuca sativa var. capitata;lettuce;4.2 6 7 7.5
        Lactuca virosa;wild lettuce;6 6.5 8 8.5
        Lagenaria siceraria;calabas;4.5 5.5 7 7.5
        Laguncularia racemosa;white buttonwood;4.5 5.5 7 7.5
        Lansium domesticum;langsat;5.5 6 6.5 7.5
        Larix decidua;European larch;4 4.5 7.5 7.8
        Lathyrus sativus;grass pea;4.5 6 7.5 8.3
        Laurus nobilis;bay leaves;4.5 5 6.5 8.2
        Lavandula angustifolia;true lavender;5.8 6.5 7.5 8.3
        Lavandula dentata;French lavender;6 6.5 7 7.5
        Lavandula intermedia;lavandin;5.8 6.5 7 7.5
        Lavandula latifolia;spike lavender;5.8 6.5 7 7.5
        Lawsonia inermis;henna;4.3 5 7 8
        Lemuropisum edule;;6 6.5 8 8.5
        Lens culinaris;lentil;4.5 5.5 7.5 8.2
        Lepidium meyenii;pepper grass;6 6.5 7.5 8.5
        Lepidium sativum;cress;5.5 6 7 7.5
        Leucaena collinsii;;5 6.5 8 8.5
        Leucaena collinsii sp. collinsii;;5 6.5 8 8.5
        Leucaena leucocephala;leucaena;5 6 7.7 8.5
        Leucaena pallida;;4.5 6.5 7.5 8.5
        Leucaena trichandra;;5 5.5 7.5 8
        Levisticum officinale;lovage;5 6 7 7.8
        Licuala ramsayi;;4.5 5.5 6.5 7.5
        Linum usitatissimum;flax;5.5 6 6.5 7
        Litchi chinensis;litchi;5 5.5 6.5 8.5
        Livistona australis;;5 5.5 7 7.5
        Lotus corniculatus;bird's-foot trefoil;4.5 6 7 8.2
        Lotus creticus;;6 6.5 7.5 8
        Lotus edulis;;6 6.5 7.5 8
        Ludwigia adscendens;water primrose;4.5 5.5 7 8.5
        Luffa acutangula;angled loofah;4.5 5.5 7 7.5
        Luffa cylindrica;smooth loofah;4.3 5.5 6.5 8.3
        Lupinus albus;white lupin;4.8 5.5 6.4 8.2
        Lupinus angustifolius;blue lupine;4.9 5.5 7 8.2
        Lupinus mutabilis;Andean lupin;4.5 5 6.5 7
        Lupinus pilosus;;6 6.5 7.4 8
        Lycium chinense;;5 5.5 7.5 8
        Lycopersicon esculentum;tomato;5 5.5 6.8 7.5
        Macadamia integrifolia;macadamia nut;4.5 5 6 7
        Macrotyloma uniflorum;horse gram;5 5.5 7 8
        Maesopsis eminii;musizi;4.5 5.5 7 7.5
        Majorana hortensis;;4.9 5.5 7 8.7
        Mallotus philippensis;;4.5 5 6.7 7.5
        Malpighia glabra;acerola;5 5.5 7.5 8
        Malus domestica;apple;4.5 6 7 8
        Malus sylvestris;wild crab;4.5 6.2 7 8.2
        Malva alcea;hollyhock mallow;6 6.5 8 8.5
        Malva moschata;musk mallow;6.5 7 8 8.5
        Mammea americana;mamey;5.5 6 6.5 8
        Mangifera indica;mango;4.3 5.5 7.5 8.5
        Manihot esculenta;cassava;4 5.5 8 9
        Manilkara achras;Sapodilla;5.5 6 7 8.5
        Manilkara zapota;sapodilla;5.5 6 7 8.5
        Maranta arundinacea;Arrowroot;5 5.5 6.5 8
        Markhamia lutea;markhamia;4 4.5 7 7.5
        Marrubium vulgare;horehound;4.5 5.5 7.5 8.3
        Marsilea quadrifolia;water shamrock;6 6.5 7.5 8
        Matricaria recutita;German chamomile;5 5.5 6.5 7
        Mauritia flexuosa;buriti palm;3.5 4 5 5.5
        Melaleuca bracteata;;4.5 5 7 8.5
        Melaleuca cajuputi;;4.5 5 6 6.5
        Melaleuca lanceolata;;5 5.5 7 7.5
        Melaleuca leucadendron;;5.5 6 7 8.5
        Melaleuca quinquenervia;melaleuca;4.5 5 6.5 7
        Melaleuca symphyocarpa;;4.5 5 6 6.5
        Melaleuca viridiflora;;4.5 5 7.5 8
        Melia azedarach;Chinaberry;5.5 6 7 7.5
        Melia azedarach var. australasica;;4.5 5 6 6.5
        Melicoccus bijugatus;mamoncillo;5 5.5 7 8.7
        Melilotus officinalis;yellow sweet clover;5 6 7 8.5
        Melissa officinalis;balm;4.5 5 6 7.8
        Melocanna baccifera;;5 5.5 6.5 7
        Mentha piperita;peppermint;4.5 5.5 6.5 8.3
        Mentha pulegium;;5 6.5 7.5 8.3
        Mesua ferrea;;4.3 5 5.5 6.9
        Metroxylon sagu;sago palm;4.5 5.5 6.5 8.5
        Michelia champaca;;4 4.5 5.5 6
        Miliusa velutina;;5.5 6.5 7 7.5
        Mimosa pigra;thorny sensitive plant;5 5.5 7 7.5
        Mimosa scabrella;braacatinga;4.8 5.5 7 7.5
        Mirabilis expansa;mauka;5.5 6 7 7.5
        Momordica charantia;bitter gourd;4.5 6 6.5 8
        Momordica cochinchinensis;;6 6.5 7 7.5
        Monochoria hastata;false pickerelweed;4 5 6.5 7
        Monochoria vaginalis;pickerel weed;4 5 6.5 7
        Monstera deliciosa;costela de Ad?o;5 5.5 6 7.5
        Morinda citrifolia;awl tree;4.3 5 6.5 7
        Moringa oleifera;horseradish tree;5 5.5 7 8.5
        Morus alba;mulberry;4.3 5.5 7.5 8.3
        Morus nigra;black mulberry;4.3 5.5 7 8.3
        Morus rubra;red mulberry;5 5.5 7 8
        Mucuna pruriens;buffalo bean;4 5 7 8
        Mucuna pruriens var utilis;velvet bean;4 5 6.5 7.5
        Muntingia calabura;calabur tree;5 5.5 6.5 7
        Murraya koenigii;barsunga;5 5.5 6.5 7
        Musa acuminata;;4 5.5 7.5 8.4
        Musa acuminata x balbisiana;;4.5 5.5 6.5 8
        Musa balbisiana;;4.5 5.5 7 7.5
        Musa halabanensis;;4.5 5.5 7 7.5
        Musa salaccensis;;4.5 5.5 7 7.5
        Musa sp.;banana;4.5 5 7 7.5
        Myrciaria cauliflora;;4.5 5.5 7.5 8
        Myristica fragrans;(<b>Both for nutmeg and mace</b>):-;5.5 6 7 7.5
        Myroxylon balsamum;;5 5.5 6.5 8
        Myrsine africana;kechemo;4.5 5 5.5 6.5
        Myrtus communis;common myrtle;5.5 6 7 8
        Nasturtium officinale;watercress;4.5 6.5 7.5 8.3
        Nasturtium schlechteri;;4.5 5 6.5 7
        Nauclea diderrichii;opepe;4.5 5.5 6.5 7.5
        Nelumbo nucifera;Egyptian lotus;5.5 6 6.5 7.3
        Neofabricia myrtifolia;;4.5 5.5 6.5 7.5
        Nepeta cataria;catnip;4.9 5.5 6.5 7.5
        Nephelium lappaceum;rambutan;4.5 5 6.5 7.5
        Nephelium mutabile;pulasan;4.3 5 5.8 8
        Neptunia prostrata;;4.5 5 6.5 7
        Nigella sativa;fennel-flower;6 6.5 7.3 8
        Nuphar advena;European yellow pond-lily;4.5 5 7.5 8
        Nuphar lutea;yellow water lily;6 6.5 7.5 8
        Nypa fruticans;nypa palm;5.5 6.5 7.5 8.5
        Ocimum americanum;;5 6 7 8
        Ocimum basilicum;basil;4.3 6 7 8.2
        Ocimum tenuiflorum;holy basil;5 6 7.5 9
        Ocotea usambarensis;East African camphor wood;5 5.5 6 6.5
        Octomeles sumatrana;erima;4 4.5 5.5 6.5
        Oenanthe javanica;Water dropwort;4.5 5.5 6.5 7
        Olea africana;jejeba;6 6.5 7.5 8.5
        Olea europaea;olive;5.3 6 7 8.5
        Oncosperma tigillarium;;5.5 6 6.5 7
        Opuntia ficus-indica;cactus pear;6.5 7 7.5 8.2
        Orbignya phalerata;babassu palm;4.5 5.5 6.5 7.5
        Origanum majorana;marjoram;4.9 5.5 7 8.7
        Origanum onites;;6.5 7 7.5 8
        Origanum vulgare;European oregano;4.5 5.5 7 8.7
        Oxalis tuberosa;oca;5.3 6 7 7.8
        Pachyrhizus ahipa;ahipa;5 5.5 6.5 7
        Pachyrhizus erosus;Wayaka yam bean;4.3 6.5 8 8
        Pachyrhizus tuberosus;yam bean;4.3 5 5.5 7.3
        Pachystela msolo;;5 5.5 7 7.5
        Panax ginseng;Chinese ginseng;5 5.5 7 7.5
        Panax quinquefolium;American ginseng;5.5 6 6.5 7
        Pangium edule;football fruit;5 5.5 6.5 7
        Papaver bracteatum;;5.5 6 7 8.3
        Papaver somniferum;poppy;6 6.5 7.5 8.3
        Paraserianthes falcataria;lbizia;4.5 5 8 8.5
        Parinari curatellifolia;mobola-plum;5 5.5 7 7.5
        Parinari nonda;Nonda plums;4.5 5.5 7 8
        Parkia biglobosa;African locust bean;4 4.5 5.5 6
        Parkia speciosa;;5 5.5 7 7.5
        Parkinsonia aculeata;Barbados flowerfence;6 6.5 7.5 8.5
        Paspalum notatum;;4.3 5 6.2 8.3
        Passiflora edulis;passionfruit;5.5 6 8 8.5
        Passiflora edulis var. edulis;;5 5.5 7.5 8
        Passiflora laurifolia;yellow granadilla;5 5.5 6.5 7
        Passiflora ligularis;sweet granadilla;5.1 6 7 7.5
        Passiflora mollissima;banana passion;4.3 6 7 8
        Passiflora quadrangularis;giant granadilla;4.3 6.5 7.5 8
        Pastinaca sativa;parsnip;5.8 6 6.8 8.3
        Paullinia cupana;guarana;3.5 4 5.5 6.5
        Paulownia tomentosa;princess tree;4.5 5.5 7 8
        Pausinystalia yohimbe;yohimbe;5 5.5 7 7.5
        Peltandra sagittifolia;white arrow arum;4.5 5 7 7.5
        Peltandra virginica;green arrow arum;3 4 8 9.5
        Peltophorum africanum;weeping wattle;5 5.5 7 7.5
        Peltophorum pterocarpum;;4.3 5 6.5 7.3
        Pennisetum clandestinum;kikuyu;4.5 5 5.5 7
        Pentaclethra macrophylla;;4 4.5 5.5 6.5
        Persea americana;avocado;4.5 5 5.8 7
        Persea americana ssp. mexican;Mexican avocado;4.3 5 7 8.3
        Persoonia falcata;;4.5 5 6 6.5
        Petalostigma pubescens;;4.5 5.5 7 8
        Petasites hybridus;butter bur;4.5 5 7 8.5
        Petroselinum crispum;parsley;5.3 6 7.5 8.3
        Phaseolus acutifolius;tepary bean;5 6 7 8
        Phaseolus coccineus;chamborote;5 5.5 7 8.2
        Phaseolus lunatus;broad bean;4.5 5.5 7 8.4
        Phaseolus polyanthus;;5.5 6.2 6.5 7
        Phaseolus vulgaris;common bean;4 5.5 7.5 9
        Phoenix dactylifera;date palm;6 6.5 8 8.5
        Phoenix reclinata;wild date palm;5 5.5 7 7.5
        Phoenix sylvestris;;5 5.5 7.5 8
        Phragmites australis;Schilf;4.8 5.5 6.5 8.2
        Physalis peruviana;Andean uvilla;4.3 6 7 8.2
        Physalis philadelphica;tomatillo;5 6 7 8
        Phytolacca acinosa;Asian poke weed;5 5.5 7.5 8
        Phytolacca dioica;bella umbra;5 5.5 7 7.5
        Picea abies;Norway spruce;3.7 4 5 5.5
        Pimenta dioica;allspice;6.3 7 7.5 8
        Pimenta racemosa;;4.5 5 6 7
        Pimpinella anisum;anise;6 6.5 7 7.3
        Pinus brutia;Calabrian pine;4.5 5.5 7 8.5
        Pinus caribaea ssp. caribaea;;4.5 5.5 7.5 8.5
        Pinus caribaea ssp. hondurensis;;4.5 5.5 6.5 7.5
        Pinus gerardiana;Ghilghoza pine;5.5 6 7 7.5
        Pinus halepensis;Aleppo pine;4.5 5.5 7.5 8.5
        Pinus mugo;mountain pine;4.5 5 7.5 8.5
        Pinus palustris;longleaf pine;4 4.5 5.5 6.5
        Pinus pinea;Italian stone pine;4 4.5 5.5 6.5
        Pinus ponderosa;Ponderosa pine;4.9 5.5 7.5 9.1
        Pinus radiata;Monterey pine;4.5 5.5 6.5 7.5
        Pinus sylvestris;Scotch pine;4.5 5 7.5 8
        Pinus taeda;loblolly pine;4 4.5 5.5 6.5
        Piper betle;betel;4.3 5 5.6 6.8
        Piper methysticum;kava;5 5.5 6.5 7
        Piper nigrum;black pepper;5 6 7 7.5
        Pistacia lentiscus;mastic tree;6 6.5 8 8.5
        Pistacia vera;Pistachio nut;6 7 8 8.5
        Pisum sativum;pea;4.5 5.5 7 8.3
        Pithecellobium dulce;filfile zaf;4.5 5.5 6.5 7.5
        Platanus orientalis;Oriental planetree;3 4.5 8.5 10
        Plectranthus esculentus;coleus potato;6 6.5 7 7.5
        Poa annua;annual bluegrass;4.5 5.5 6.5 8.3
        Podocarpus elatus;weeping podocarpus;4.5 5.5 6.5 7.5
        Podocarpus falcatus;sickle-leaved yellow-wood;4.5 5 7 7.5
        Pogostemon cablin;patchouli;5.5 6 6.5 7
        Polymnia sonchifolia;leafcup;5 5.5 6.5 7
        Polyscias fulva;parasol tree;4.5 5 6.5 7
        Polyscias verticillata;;4.5 5.5 7 8
        Pontederia cordata;pickerel weed;5.5 6 7.5 8
        Populus ciliata;Himalayan poplar;5 5.5 7 7.5
        Populus deltoides;eastern cottonwood;4.5 5.5 6.5 8
        Portulaca oleracea;purslane;4.3 5.5 7 8.3
        Portulaca quadrifida L.;;4.5 5.5 6.5 7.5
        Potentilla anserina;silverweed;5.5 6 8 8.5
        Pouteria campechiana;Canistel;5.5 6 7.5 8
        Pouteria lucuma;lucuma;6 6.5 7.5 8.5
        Pouteria sapota;sapote;5 6 6.5 7
        Primula veris;European cowslip;6 6.5 8 8.5
        Prosopis africana;;5 5.5 7 7.5
        Prosopis alba;;4.5 5 6.5 7
        Prosopis chilensis;;6 6.5 7.5 8.5
        Prosopis glandulosa;;5 5.5 7 7.5
        Prosopis juliflora;algarroba;5.5 6.5 7.5 8.5
        Prosopis pallida;;5 5.5 6 6.7
        Prosopis tamarugo;;6.5 7 8 8.5
        Prunella vulgaris;self-heal;6 6.5 8 8.5
        Prunus africana;red stinkwood;5 5.5 6.5 7
        Prunus amygdalus;almond;5.5 6.5 7 8
        Prunus armeniaca;apricot;5 6.5 7 8
        Prunus avium;gean;4.5 5.5 6.5 7
        Prunus capuli;capulin;5 5.5 6.5 7.5
        Prunus cerasus;sour cherry;4.5 6 6.5 7.5
        Prunus domestica;common plum;4.5 5.5 6.1 7.4
        Prunus mume;Japanese apricot;4.5 5 6.5 7
        Prunus persica;peach;4.5 5.5 6.3 7.5
        Prunus salicina;Japanese plum;4.5 5.5 6.5 7.5
        Psidium cattleianum;cherry guava;4.5 5.5 6.5 7.7
        Psidium friedrichsthalianum;;6 6.5 7.2 7.7
        Psidium guajava;guava;4 5.5 7.5 8.5
        Psophocarpus tetragonolobus;winged bean;4.3 5.5 7 8.5
        Pterocarpus angolensis;kiaat;5 5.5 7 7.5
        Pterocarpus dalbergioides;;5 5.5 6.5 7.5
        Pterocarpus erinaceus;;4.5 5 5.5 6.5
        Pterocarpus indicus;padauk;5 5.5 6.5 7.5
        Pterocarpus lucens;;5 5.5 7 7.5
        Pterocarpus santalinus;;4.5 5 5.5 6.5
        Pueraria lobata;kudzu;5 5.5 6.5 7.1
        Pueraria phaseoloides;puero;3.5 4.5 6.5 8
        Punica granatum;pomegranate;5.8 6.5 7.5 8.5
        Pycnanthus angolensis;African nutmeg;4 5 6 7
        Pyrus communis;pear;4.5 5.5 6.5 8.3
        Quercus agrifolia;California live oak;5 5.5 6.5 7
        Quercus alba;white oak;5 5.5 7 8
        Quercus chrysolepis;canyon live oak;5.6 6 7 7.5
        Quercus dumosa;California scrub oak;5 5.5 6.5 7
        Raphanus caudatus;rat-tailed radish;5 6 6.5 7.5
        Raphanus sativus;radish;4.3 6 7 8.3
        Raphanus sativus var. oleiferus;fodder radish;5 6 6.5 7.5
        Raphanus sativus var. radicula;radish;5.2 6 7 8.3
        Rauvolfia serpentina;;5 5.5 7 7.5
        Rhamnus prinoides;dogwood;5 5.5 6.5 7
        Rheum rhaponticum;rhubarb;5.3 6 7 7.8
        Rhigozum trichotomum;driedoring;5 6 7 8
        Rhizophora mangle;mangrove;6.5 6.7 7.2 7.5
        Rhodiola rosea;roseroot stonecrop;5 5.5 6.5 7
        Ribes hirtellum;;5.5 6.5 7.5 8
        Ribes nigrum;black currant;6 6.5 7.5 8
        Ribes rubrum;red current;6 6.5 7.5 8
        Ribes sativum;;5.5 6 6.5 7.5
        Ribes uva-crispa;gooseberry;5 6 7 7.5
        Ricinodendron heudelotii;African nut tree;5 5.5 6.5 7
        Ricinodendron rautanenii;mongongo nut;6 6.5 8 8.5
        Ricinus communis;castor oil plant;4.5 5 6.5 8
        Robinia pseudoacacia;false acacia;4.5 5.5 6.5 8.2
        Rosmarinus officinalis;rosemary;4.5 6 7.5 8.7
        Rubia tinctorum;madder;6 6.5 8 8.5
        Rubus idaeus ssp. idaeus;European raspberry;4.5 5.5 6.5 7.8
        Rubus occidentalis;black raspberry;5.5 6 7 7.8
        Rubus occidentalis x idaeus;;5.5 6 7 7.5
        Rubus sp.;dewberry;4.5 5.5 6.5 8
        Rungia klossii;Rungia;5 5.5 6.2 7
        Ruta graveolens;rue;6 6.5 7.5 8.5
        Ruta graveolens var. bracteosa;;6 6.5 7.5 8.5
        Saccharum edule;duruka;4.5 5 6 6.5
        Saccharum spontaneum;;4.5 5 6 7.5
        Sagittaria sagittifolia;old-world arrowhead;5.5 6 7.5 8.2
        Salacca wallichiana;;4.5 5 6 6.5
        Salacca zalacca;;4.5 5 6 6.5
        Salix babylonica var. sacramenta;;6 6.5 7.5 8
        Salvadora persica;tooth brush tree;6.5 7 8 8.5
        Salvia officinalis;sage;4.2 5 6.5 8.3
        Salvia sclarea;clary sage;5.5 6 7 7.5
        Samanea saman;rain tree saman;4.5 5.5 6.5 7.5
        Sambucus canadensis;common elder;5.3 6 6.5 7.3
        Sambucus cerulea;;5.5 6 7 7.8
        Sambucus ebulus;dwarf elder;6 6.5 8 8.5
        Sambucus nigra;European elder;5.5 6 7.5 8
        Samolus valerandi;seaside brookweed;6.5 7 8.5 9
        Sanguisorba minor;garden burnet;6 6.5 7.5 8.2
        Santalum acuminatum;;6.5 7 8 8.5
        Santalum album;sandalwood;5 6 7 9
        Santolina chamaecyparissus;lavender cotton;6 6.5 8 8.5
        Sapium ellipticum;musoso;4.5 5 6.5 7
        Satureja hortensis;summer savory;5.5 6 7 8.2
        Satureja montana;;6 6.5 7 7.5
        Sauropus androgynus;;5.5 6 7 7.5
        Schima wallichii;cheloni;4.5 5 6.5 7
        Schleichera oleosa;Indian lac tree;5 5.5 6.5 7.8
        Scirpus lacustris;common club-rush;5.5 6 7 7.5
        Sclerocarya birrea ssp. caffra;marula;5 6 7 8
        Sclerocarya caffra;;5 5.5 6.5 7.5
        Sechium edule;chayote;4.3 5.5 7 8
        Securidaca longependunculata;violet tree;4.5 5 7 7.5
        Senna spectabilis;casia amarilla;5 5.5 7 7.5
        Serenoa repens;palmetto;5 5.5 7 7.5
        Sesbania grandiflora;scarlet wisteria tree;4.5 5.5 7.5 8.5
        Sesbania sesban;river bean;4 5 7 9.9
        Shorea robusta;;4.5 5 6.7 7.5
        Simarouba glauca;bwa blan;5.5 6 8 8.5
        Simmondsia chinensis;jojoba;5 6.5 7.5 8.2
        Sloanea woollsii;carabeen;4.5 5 6.5 7
        Solanum aethiopicum;scarlet eggplant;4.3 5.5 7 8.5
        Solanum ferox;hairy-fruited eggplant;4.5 5.5 7 7.5
        Solanum hyporhodium;cocona shrub;6.5 6.8 7.2 7.5
        Solanum incanum;Indian rennet;6 6.5 7.5 8
        Solanum macrocarpon;gboma eggplant;4.3 6.5 7.5 8.5
        Solanum melongena;eggplant;4.3 5.5 6.8 8.5
        Solanum muricatum;melon shrub;6 6.5 7 7.5
        Solanum nigrum;black nightshade;4.3 6.5 7.5 8.5
        Solanum oleraceum;;4.3 6.5 7.5 8.5
        Solanum quitoense;naranjilla;5.8 6.5 7 8
        Solanum torvum;prickly solanum;4.3 5 6 6.8
        Solanum tuberosum;potato;4.2 5 6.2 8.5
        Solanum x juzepczukii;bitter potato;5.5 6 7 7.5
        Solenostemon rotundifolius;hausa potato;5.5 6.5 7.5 8
        Sonneratia caseolaris;firefly mangrove;6.5 6.7 7.3 7.5
        Sorbus domestica;serviceberry;5.5 6 8 8.5
        Sorghum bicolor;bachanta;5 5.5 7.5 8
        Sorghum bicolor var. sweet;broom-corn;5 6 7 8.5
        Soymida febrifuga;Indian redwood;4.5 5.5 6.5 7.8
        Sparganium erectum;bur-reed;5.8 6 7.5 8
        Spartium junceum;Spanish broom;4.5 6 7 8.2
        Spathodea campanulata;African tulip tree;4.5 5 7.5 8
        Sphenostylis stenocarpa;African yam bean;4.5 5.5 6 7
        Spinacia oleracea;spinach;5.3 6 7.5 8.3
        Spodiopogon sibiricus;;4 4.5 5.5 6
        Spondias cytherea;ambarella;4.5 5.5 6.5 8
        Spondias mombin;yellow mombin;4.3 5.5 6.5 8
        Spondias purpurea;red mombin;5.5 6 7 8
        Stachys affinis;;5.5 6 6.5 7
        Sterculia foetida;;5 6 7.5 8
        Stereospermum kunthianum;khash;4.5 5 6.5 7
        Stevia rebaudiana;sweet weed;4 5 6.5 7.5
        Strychnos cocculoides;bush orange;4.5 5.5 7.5 8
        Strychnos innocua;;5 5.5 6.5 7
        Strychnos spinosa;groenklapper;4.5 5 7 7.5
        Stylosanthes erecta;;4.5 5 6 7.1
        Swietenia mahogani;West Indian mahogany;5.5 6 7 8
        Syncarpia hillii;;4.5 5 6 6.5
        Syzygium cordatum;water berry;5 5.5 7 7.5
        Syzygium cumini;thabyay-hypyoo;4.5 5.5 7 8
        Syzygium guineense;;5 5.5 7 7.5
        Syzygium javanicum;Java apple;5 6 7.5 8
        Syzygium malaccense;Malay apple;5 5.5 6.5 8
        Tabebuia rosea;;4.5 5.5 7 8.5
        Talinum triangulare;potherb fameflower;4.5 5 6.5 7
        Tamarindus indica;tamarind;4.5 5.5 6.5 8.5
        Tamarix chinensis;Chinese tamarisk;6 6.5 8 8.5
        Taraxacum officinale;dandelion;4.5 5 6.5 8.3
        Tecoma stans;yellow bells;5.5 6 8.5 9
        Tectona grandis;teak;4.5 6 7.5 8.5
        Telfairia occidentalis;;4.5 5 6 7
        Telfairia pedata;;5 5.5 6 7
        Tephrosia candida;hoang pea;3.5 4.5 6.5 7.5
        Tephrosia vogelii;fish poison bean;4.5 5 6.5 7
        Teramnus labialis;;5 6 8 9
        Terminalia arjuna;;5 5.5 6 7
        Terminalia arostrata;;4.5 5 6 6.5
        Terminalia bellirica;myrobalan;5 5.5 6.5 7.5
        Terminalia brownii;darot;5 5.5 7 7.5
        Terminalia catappa;Tropical almond;4.3 5 7 8
        Terminalia chebula;;5 5.5 6.5 7.5
        Terminalia mantaly;Madagascar almond;5 5.5 7 7.5
        Terminalia prunioides;;5.5 6 8 8.5
        Terminalia sericocarpa;;4.5 5.5 6.5 7
        Tetragonia tetragonioides;;6 6.5 7 7.5
        Tetrapleura tetraptera;aidan tree;4 4.5 6.5 7
        Thaumatococcus daniellii;;4.3 4.5 5 7
        Theobroma bicolor;;4.5 5 6 8.5
        Theobroma cacao;cocoa;4 5 6.5 8
        Theobroma grandiflorum;cupuassu;4.5 5 6.5 8.5
        Thespesia populnea;fey dayiti;6 6.5 8 8.5
        Thymus maroccanus;;6 6.5 7.5 8
        Thymus serpyllum;thyme;4.5 5 6 7.8
        Thymus vulgaris;garden thyme;4.5 5.5 6.5 8
        Tilia cordata;European linden;6 6.5 7.5 8
        Tipuana tipu;;5 5.5 7 7.5
        Toona ciliata;mahanim;4.5 5.5 6.5 7.5
        Toona serrata;;4 4.5 5.5 6.5
        Trachyspermum ammi;;6 6.5 7.5 8
        Tragopogon porrifolius;salsify;6 6.5 7.5 8
        Trapa natans;water chestnut;5 5.5 7.5 8.2
        Trichanthera gigantea;;4.5 5 6.5 7
        Trichosanthes cucumerina;snake gourd;6 6.5 7 8
        Trifolium arvense;hare's-foot clover;6 6.2 6.8 7
        Trifolium burchellianum;;5 5.5 6.5 7
        Trifolium fragiferum;strawberry clover;5.3 6.5 7 9
        Trifolium pratense;red clover;4.5 6 7.5 8.2
        Trifolium resupinatum;Persian clover;4.8 6 7 8.2
        Trigonella foenum-graecum;fenugreek;5.3 7 7.5 8.2
        Tripsacum dactyloides;;5.5 6 7 7.5
        Tristania conferta;;4.5 5 6.5 7
        Triticum aestivum;wheat;5.5 6 7 8.5
        Tropaeolum tuberosum;mashua;5.3 6 7 7.5
        Tylosema esculentum;marama bean;5 5.5 7 7.5
        Typha angustifolia;small reed mace;4 4.5 8 8.5
        Typha domingensis;;6 6.5 7.5 8
        Typha latifolia;reed mace;3.7 4.5 7.5 8
        Uapaca kirkiana;wild loquat;4 4.5 6 6.5
        Ullucus tuberosus;ulluco;5 5.5 6.5 7
        Uncaria gambir;gambier;5.5 6 7 8
        Urtica dioica;nettle;6.5 7 8.5 9
        Uvaria scheffleri;mukukuma;4.5 5 6 6.5
        Vaccinium angustifolium;low-bush blueberry;2.8 4.2 5.2 6.6
        Vaccinium corymbosum;high-bush blueberry;3 4 5 5.5
        Vaccinium macrocarpon;cranberry;4.5 5 5.5 6
        Vaccinium myrtillus;bilberry;4 4.5 6 7.5
        Valeriana officinalis;valerian;5 5.5 7 7.5
        Vangueria infausta;false medlar;5 5.5 7 7.5
        Vangueria madagascariensis;common wild medlar;5 5.5 7 7.5
        Vanilla planifolia;vanilla;4.3 5.5 7 8
        Ventilago viminalis;thandorah/eng;5 5.5 7.5 8
        Vernonia amygdalina;bitterleaf;5 5.5 7 7.5
        Vetiveria zizanioides;vetiver;3 4.5 8 9.9
        Vicia ervilia;bitter vetch;5.6 7 7.5 8.2
        Vicia faba;broad bean;4.5 6 7 8.6
        Vicia monantha;bard vetch;5.5 6 7 7.5
        Vicia sativa ssp. nigra;garden vetch;4.9 6 7 8.2
        Vigna aconitifolia;moth bean;5 6.5 7.5 8
        Vigna angularis;adzuki bean;5 5.5 6.5 7.5
        Vigna mungo;black gram;4.5 5.5 6.5 7.5
        Vigna radiata;green gram (India);4.3 5.5 6.2 8.3
        Vigna subterranea;bambara groundnut;4.3 5 6.5 7
        Vigna umbellata;rice bean;5.5 6 7.5 8
        Vigna unguiculata;cow pea;4 5.5 7.5 8.8
        Vigna unguiculata ssp. biflora;sow pea;4.5 5.5 6.5 7.5
        Vigna unguiculata ssp. sesquipedalis;asparagus bean;4.3 5.5 7 7.5
        Vigna unguiculata ssp. unguiculata;black-eyed pea;4.3 5.5 7.5 8.8
        Vigna vexillata;zombi pea;4.5 5.5 6.5 8
        Vitex agnus-castus;chaste tree;6 6.5 7.5 8
        Vitex doniana;Afetewa;5 5.5 7 7.5
        Vitex keniensis;moru oak;5 5.5 7 7.5
        Vitex parviflora;molave;5 5.5 6.5 7
        Vitis rotundifolia;muscadine grape;5.8 6 7 8
        Vitis vinifera;grape;4.5 5.5 7.5 8.5
        Warburgia salutaris;pepperbark tree;4.5 5 7 7.5
        Warburgia ugandensis;pepper bark tree;5 5.5 6.5 7
        Withania somnifera;Indian ginseng;6.5 7.5 8 8.5
        Xanthosoma brasiliense;;4.5 5 6 6.5
        Xanthosoma sagittifolium;tannia;4.5 5.5 7 7.8
        Ximenia americana;yellow plum;4.5 5 7 7.5
        Xylocarpus granatum;mangrove;6.5 6.8 7.2 7.5
        Xylocarpus mekongensis;;5.5 6.5 7 7.5
        Xylocarpus moluccensis;mangrove;6 6.5 7 7.5
        Yucca elephantipes;Yucca;4.5 5 6 7.3
        Zanthoxylum chalybeum;knob wood;5 5.5 7 7.5
        Zea mays ssp. mays;corn;4.5 5 7 8.5
        Zea mays ssp. saccharata;sweet corn;4.5 5.5 6.8 7.5
        Zingiber officinale;ginger;4.3 6 7 7.5
        Zizania latifolia;Machurian wild rice;4.5 5.5 6 7
        Ziziphus abyssinica;catchthorn;5 5.5 7.5 8
        Ziziphus mauritiana;ber;5 5.5 7.5 8.5
        Ziziphus mucronata;buffalo thorn;5 5.5 8 9
        Zostera marina;eelgrass;6.5 6.8 7.2 7.5
        """u8;
}
